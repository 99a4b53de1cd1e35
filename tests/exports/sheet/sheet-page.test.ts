import { expect, it } from 'vitest';
import { markupText, tag } from '../../../src/exports/sheet/markup';
import { sheetPage } from '../../../src/exports/sheet/sheet-page';

const sheet = {
  ...{ title: 'Airfield', day: 'Sunday', head: [], stays: [], staysNote: 'No standing spot yet.' },
  ...{ doubts: [], parts: [], cautions: [], made: '' },
};
const drawn = (id: string) => tag('svg', { class: id });

it('[B1070] the sheet holds a map for paper and one for a phone; without a field none, not an empty frame', () => {
  const full = markupText(sheetPage(sheet, { paper: drawn('paper'), phone: drawn('phone') }));
  expect(full.match(/<svg class="(paper|phone)"/g)).toHaveLength(2);
  const empty = markupText(sheetPage(sheet, null));
  expect(empty).not.toContain('Map of the day');
  expect(empty).toContain('No standing spot yet.');
});

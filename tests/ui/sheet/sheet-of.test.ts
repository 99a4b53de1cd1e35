import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Derived } from '../../../src/state/derived.svelte';
import { FieldDay } from '../../../src/state/field-day.svelte';
import { SurveyDocument } from '../../../src/state/document.svelte';
import { View } from '../../../src/state/view.svelte';
import { readPreferences } from '../../../src/state/preferences.svelte';
import * as airfieldTools from '../../../src/state/airfield-tools';
import { outlookOf } from '../../../src/figures/outlook';
import { spotFigures } from '../../../src/figures/spot-figures';
import type { Survey } from '../../../src/survey/document';
import { chooseWindows } from '../../../src/survey/edits/set-plan';
import { setAccess } from '../../../src/survey/edits/set-properties';
import { setPermission } from '../../../src/survey/edits/set-permission';
import { setRules } from '../../../src/survey/edits/set-rules';
import { formatsFor } from '../../../src/ui/formats';
import { sheetOf, type SheetNeeds } from '../../../src/ui/sheet/sheet-of';
import { focal } from '../../../src/units/format';
import { opened } from '../../support/contents';

const sample = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const orchard = {
  spot: 's5x9ht',
  path: 'r8k2v4/25/arrival',
  from: '2026-06-21T15:00:00Z',
  to: '2026-06-21T18:00:00Z',
};
const deck = {
  spot: 's2w6bn',
  path: 'r8k2v4/25/departure',
  from: '2026-06-21T06:00:00Z',
  to: '2026-06-21T08:00:00Z',
};
const format = formatsFor(readPreferences(null));

function sheet(survey: Survey, more: Partial<SheetNeeds> = {}) {
  const document = new SurveyDocument({ id: 'x', survey, problems: [], readOnly: false }, () => undefined);
  const figures = new Derived({
    ...{ document, view: new View(), terrain: null, now: () => Date.parse('2026-06-21T08:00Z') },
    airfieldTools: { found: airfieldTools, failed: false },
  });
  const day = new FieldDay(figures);
  const needs: SheetNeeds = {
    contents: figures.contents,
    date: figures.day.date,
    timeZone: figures.day.timeZone,
    format,
    sunTimes: figures.light.sunTimes,
    declination: figures.airfield.declination,
    flow: '25 in use',
    stays: day.stays,
    staysNote: null,
    rulesAt: ({ spot, from }) => spot && day.rulesAt(spot, from),
    ruleDoubts: day.ruleDoubts,
    instead: () => [],
    movements: [],
    pack: day.pack,
    own: { items: [], minutesFromHome: null },
    telling: ['telling'],
    made: '',
    ...more,
  };
  return { sheet: sheetOf(needs), day, figures };
}
const chosen = (...windows: (typeof orchard)[]) => chooseWindows(sample, windows);

describe('the field sheet in words', () => {
  it('[U960] says of each window what the figures say at its middle: focal length, range and light', () => {
    const { sheet: made, figures } = sheet(chosen(orchard));
    const spot = figures.contents.spots.find(({ id }) => id === 's5x9ht');
    const path = figures.sights.paths.find(({ ref }) => ref.path === orchard.path);
    if (!spot || !path) throw new Error('expected the spot and the path');
    const [at] = spotFigures(spot, [path], outlookOf(figures.contents, null), [
      Date.parse('2026-06-21T16:30Z'),
    ]);
    const best = at?.paths[0]?.best;
    const [window] = made.stays[0]?.windows ?? [];
    expect(window?.picture).toBe(
      `${focal(best?.focalLength ?? NaN)} at ${format.length(best?.slantRange ?? NaN)}`,
    );
    expect(window?.light).toBe('front-lit');
    expect(best?.light).toBe('front-lit');
    expect(window?.settings).toMatch(/^f\/[\d.]+, 1\/\d+ s, ISO \d+$/);
  });

  it('[F1076] says of the compass how far it is off, or that this is not known', () => {
    const bearings = (more: Partial<SheetNeeds>) =>
      sheet(sample, more).sheet.head.find(([label]) => label === 'Bearings')?.[1];
    expect(bearings({})).toMatch(/^true; compass needle \d+° east of true north$/);
    expect(bearings({ declination: null })).toBe('true; compass needle not known');
  });

  it('[U961] says when to leave where, how long and how far; at the first when to be there and to leave home', () => {
    const { sheet: made } = sheet(chosen(orchard, deck), {
      own: { items: ['rain cape'], minutesFromHome: 50 },
    });
    expect(made.stays.map(({ way }) => way)).toEqual([
      'Be there by 08:00. Leave home by 07:10 (50 min).',
      expect.stringMatching(/^Leave Car park, top deck by 16:\d\d: \d+ min by car, about [\d,]+ m\.$/),
    ]);
    const list = made.parts.find(({ title }) => title === 'Take along')?.ticks ?? [];
    expect(list.at(-1)).toBe('rain cape');
  });

  it('[U962] stands without ticks on the order of the plan, for the day that is looked at alone', () => {
    const other = { ...orchard, from: '2026-06-22T15:00:00Z', to: '2026-06-22T18:00:00Z' };
    const { sheet: made, day } = sheet(chosen(other));
    expect(day.isTicked).toBe(false);
    expect(day.onOtherDays).toBe(1);
    expect(made.stays.map(({ spot }) => spot)).toContain('Mill Lane lay-by');
    // Two stays at one place: nobody is told to be where they are.
    expect(made.stays.map(({ way }) => way).join()).toMatch(/Stay, or come back by 13:50: from 11:45/);
  });

  it('[U963] arguable: leave that ends before the visit, an old check and a waiting answer all stand before the map', () => {
    const old = setAccess(chosen(orchard, deck), 's5x9ht', { checkedOn: '2024-05-30' });
    const asked = setPermission(old, 's2w6bn', { answer: 'waiting', askedOn: '2026-06-01' });
    expect(sheet(asked).sheet.doubts).toEqual([
      'Car park, top deck: ask whether one may stand there.',
      'Car park, top deck: Permission was asked for on 2026-06-01; there is no answer yet.',
      'Orchard Path, east end: Access here was last checked on 2024-05-30, over a year before.',
    ]);
    const ended = setPermission(chosen(deck), 's2w6bn', { answer: 'granted', until: '2026-06-20' });
    expect(sheet(ended).sheet.doubts.join()).toContain('ends on 2026-06-20');
  });

  it('[U964] arguable: where listening is forbidden neither frequencies nor telling words are on paper', () => {
    const radio = (survey: Survey) =>
      JSON.stringify(sheet(survey).sheet.parts.find(({ title }) => title === 'Radio'));
    expect(radio(chosen(orchard))).toContain('119.355');
    expect(radio(chosen(orchard))).toContain('telling');
    const forbidden = radio(setRules(chosen(orchard), { radio: 'forbidden' }));
    expect(forbidden).toContain('forbidden');
    expect(forbidden).not.toMatch(/119\.355|telling/);
  });

  it('[U965] arguable: where the field forbids photography the sheet proposes nothing and says why', () => {
    const { sheet: made } = sheet(setRules(sample, { photography: 'forbidden' }));
    expect(made.stays).toEqual([]);
    expect(made.doubts[0]).toBe('The field forbids photography: no spot is proposed. Ask its office.');
  });
});

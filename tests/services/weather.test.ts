import { expect, test } from 'vitest';
import { Weather } from '../../src/services/weather';
import { WindHistory } from '../../src/services/wind-history';
import { SurveyDocument } from '../../src/state/document.svelte';
import { readContents } from '../../src/survey/contents';
import { newSurvey } from '../../src/survey/new-survey';

function setUp() {
  let changes = 0;
  const document = new SurveyDocument(
    { id: 'mine', survey: newSurvey({}), problems: [], readOnly: false },
    () => changes++,
  );
  const derived = {
    airfield: { declination: 4 as number | null },
    day: { timeZone: 'UTC' },
    get contents() {
      return readContents(document.survey);
    },
  };
  const openOther = () =>
    document.open({ id: 'other', survey: newSurvey({}), problems: [], readOnly: false });
  return { document, derived, openOther, changes: () => changes };
}
const now = () => Date.UTC(2026, 5, 21, 12);

test('[F410] a typed wind is kept in the survey, as one step', async () => {
  const { document, derived } = setUp();
  const weather = new Weather({ document, derived, now });
  expect(await weather.enter('240/12G20', false)).toBeNull();
  expect(document.undoLabel).toBe('enter the wind');
  expect(document.survey.sunside['weather']).toMatchObject({ text: '240/12G20', follow: true });
  document.undo();
  expect(document.survey.sunside['weather']).toBeUndefined();
});

test('[F410] what cannot be read changes nothing, and says why', async () => {
  const { document, derived, changes } = setUp();
  expect(await new Weather({ document, derived, now }).enter('breezy', false)).toMatch(/\S/);
  expect(changes()).toBe(0);
});

test('[F410] of two winds the one entered last is kept', async () => {
  const { document, derived } = setUp();
  const weather = new Weather({ document, derived, now });
  await Promise.all([weather.enter('240/12', false), weather.enter('060/08', false)]);
  expect(document.survey.sunside['weather']).toMatchObject({ text: '060/08' });
});

test('[F1075] a wind from magnetic north waits for the model: taken as true it would be wrong in silence', async () => {
  const { document, derived, changes } = setUp();
  derived.airfield.declination = null;
  const weather = new Weather({ document, derived, now });
  expect(await weather.enter('240/12', true)).toMatch(/not known yet/);
  expect(changes()).toBe(0);
  expect(await weather.enter('240/12', false)).toBeNull();
  derived.airfield.declination = 20;
  expect(await weather.enter('240/12', true)).toBeNull();
  expect(document.survey.sunside['weather']).toMatchObject({ winds: [{ direction: 260 }] });
});

test('[F411] a wind does not come into a survey that was opened meanwhile', async () => {
  const { document, derived, openOther, changes } = setUp();
  const entered = new Weather({ document, derived, now }).enter('240/12', false);
  openOther();
  expect(await entered).toBeNull();
  expect([changes(), document.survey.sunside['weather']]).toEqual([0, undefined]);
});

const table = (name: string, rows: number, direction: number) =>
  new File(
    [
      'valid,drct,sknt\n',
      ...Array.from({ length: rows }, (_, i) => {
        const time = new Date(Date.UTC(2024, 0, 1, i)).toISOString().slice(0, 16).replace('T', ' ');
        return `${time},${direction},10\n`;
      }),
    ],
    name,
  );

test('[F412] of two tables of past winds the one brought in last is kept, however long the first takes', async () => {
  const { document, derived } = setUp();
  const history = new WindHistory({ document, derived });
  const [long, short] = [
    await history.layout(table('long.csv', 60_000, 90)),
    await history.layout(table('short.csv', 200, 270)),
  ];
  if (!long || !short) throw new Error('expected two layouts');
  const others: Promise<unknown>[] = [];
  // While the first one is being read the second is asked for.
  await history.read({ ...long, unit: 'kt' }, () => {
    if (others.length === 0) others.push(history.read({ ...short, unit: 'kt' }, () => undefined));
  });
  expect(others).toHaveLength(1);
  await Promise.all(others);
  expect(readContents(document.survey).windRecord).toMatchObject({ observations: 200 });
});

test('[F412] a table does not come into a survey that was opened while it was read', async () => {
  const { document, derived, openOther, changes } = setUp();
  const history = new WindHistory({ document, derived });
  const layout = await history.layout(table('short.csv', 200, 270));
  if (!layout) throw new Error('expected a layout');
  const read = history.read({ ...layout, unit: 'kt' }, () => undefined);
  openOther();
  expect((await read).observations).toBe(200);
  expect(changes()).toBe(0);
});

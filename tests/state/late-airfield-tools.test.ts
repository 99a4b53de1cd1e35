import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../src/figures/figures-for';
import { runwayLength } from '../../src/figures/geometry/along-runway';
import * as tools from '../../src/state/airfield-tools';
import { Derived } from '../../src/state/derived.svelte';
import { SurveyDocument } from '../../src/state/document.svelte';
import { LateAirfieldTools, type AirfieldTools } from '../../src/state/late-airfield-tools.svelte';
import { View } from '../../src/state/view.svelte';
import type { Survey } from '../../src/survey/document';
import { readContents } from '../../src/survey/contents';
import { newSurvey } from '../../src/survey/new-survey';
import { feature, opened } from '../support/contents';

const sample = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const runway = (id: string, line: number[][], more = {}) =>
  feature(id, 'runway', 'LineString', line, { ends: [{ designator: '09' }, { designator: '27' }], ...more });
const a = [18.17, 50.93];
/** Something odd in the reading (a width that is none) and something that only the checks see (a runway without length). */
const odd = {
  ...newSurvey({}),
  features: [runway('point', [a, a], { width: 'wide' })],
} as unknown as Survey;

function started(survey: Survey) {
  let asked = 0;
  let arrive: (tools: AirfieldTools) => void = () => {};
  let fail: () => void = () => {};
  const airfieldTools = new LateAirfieldTools(() => {
    asked++;
    return new Promise((resolve, reject) => ([arrive, fail] = [resolve, reject]));
  });
  const open = (s: Survey, id: string) => ({ id, survey: s, problems: [], readOnly: false });
  const document = new SurveyDocument(open(survey, 'first'), () => undefined);
  const now = () => Date.UTC(2026, 5, 21, 12);
  const { airfield } = new Derived({ ...{ document, view: new View(), now, terrain: null }, airfieldTools });
  const reasons = () => airfield.problems.map(({ reason }) => reason);
  const settled = () => new Promise((resolve) => setImmediate(resolve));
  return {
    ...{ airfield, reasons, asked: () => asked },
    openOther: (s: Survey) => document.open(open(s, 'other')),
    arrive: async () => (arrive(tools), settled()),
    fail: async () => (fail(), settled()),
  };
}

describe('magnetic north and the checks of a survey, loaded after the page is there', () => {
  test('[F1070] until then what the reading found and the lengths stand; what is magnetic is not known', () => {
    const { airfield, reasons } = started(sample);
    const contents = readContents(sample);
    expect(reasons()).toEqual(contents.problems.map(({ reason }) => reason));
    expect(airfield.declination).toBeNull();
    expect(airfield.runways).toEqual(contents.runways.map(() => null));
    expect(airfield.lengths.every((length) => length !== null && length > 500)).toBe(true);
  });

  test('[F1070] the runway without length is no problem of the checks before these are there', () => {
    const { reasons } = started(odd);
    expect(reasons()).toHaveLength(1);
    expect(reasons()[0]).toContain('width');
  });

  test('[F1071] asked for once; then all stands as if it had been there from the start', async () => {
    const { airfield, reasons, asked, arrive } = started(sample);
    void [reasons(), airfield.declination, airfield.runways];
    expect(asked()).toBe(1);
    await arrive();
    const all = figuresFor(readContents(sample), Date.UTC(2026, 5, 21, 12), null);
    expect(airfield.runways.map((r) => r?.length)).toEqual(all.runways.map(({ length }) => length));
    expect(airfield.lengths).toEqual(all.runways.map(({ length }) => length));
    // The field's reference and the runway's first end lie near one another; the model itself has its test elsewhere.
    expect(airfield.declination).toBeCloseTo(all.runways[0]?.declination ?? NaN, 1);
    expect(reasons()).toEqual(expect.arrayContaining(all.problems.map(({ reason }) => reason)));
    expect(asked()).toBe(1);
  });

  test('[F1072] they arrive after another survey was opened: that one is checked, and only that one', async () => {
    const { airfield, reasons, arrive, openOther, asked } = started(sample);
    void reasons();
    openOther(odd);
    await arrive();
    expect(reasons().join()).toContain('Both ends of the runway are in one place');
    expect(airfield.runways).toEqual([null]);
    openOther(newSurvey({}));
    expect(reasons()).toEqual([]);
    expect(asked()).toBe(1);
  });

  test('[F1073] where they cannot be loaded that is said, and what the reading found stays', async () => {
    const { airfield, reasons, fail, asked } = started(odd);
    void reasons();
    await fail();
    expect(reasons()).toEqual([
      expect.stringMatching(/could not be loaded.*Reload the page/),
      expect.stringContaining('width'),
    ]);
    expect([airfield.declination, asked()]).toEqual([null, 1]);
  });
});

test('[F1074] the length of a runway is that of its figures, and none under 1 m', () => {
  const { runways } = readContents(sample);
  for (const r of runways) expect(runwayLength(r)).toBe(tools.runwayFigures(r, 0, 0)?.length);
  expect(readContents(odd).runways.map(runwayLength)).toEqual([null]);
});

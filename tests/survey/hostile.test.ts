import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { problemsOf } from '../../src/figures/checks/problems';
import { momentsOf } from '../../src/figures/light/moments';
import { runwayFigures } from '../../src/figures/runway-figures';
import { allSpotFigures } from '../../src/figures/spot-figures';
import { fieldElevation, pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { setProperties } from '../../src/survey/edits/set-properties';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { hostileText, manyFeatures, nested, surveyOf } from '../support/hostile';
import { cases } from '../support/thorough';

/** Pinned; what once failed is pinned beside it. */
const seeds = [20260621, 4, 77];

function opened(text: string): Survey {
  const result = openSurvey(text);
  if (!result.ok) throw new Error(`expected a survey, got: ${result.reason}`);
  return result.survey;
}
const refusal = (text: string) => {
  const result = openSurvey(text);
  return result.ok ? 'opened' : result.reason;
};

describe('a file that is made to hurt', () => {
  test.each(seeds)('[X11] is opened, read, computed and saved without harm or loss (seed %d)', (seed) => {
    const run = fc.check(
      fc.property(hostileText, (text) => {
        const survey = opened(text);
        const contents = readContents(survey);
        const now = Date.UTC(2026, 5, 21, 12);
        const { a, b } = momentsOf(contents, now);
        const runways = contents.runways.map((r) => runwayFigures(r, fieldElevation(contents), a));
        problemsOf(contents, runways, a);
        allSpotFigures(
          contents,
          pathsOf(contents, () => true, null),
          [a, b],
          null,
        );
        const saved = saveSurvey(survey);
        expect(saveSurvey(opened(saved))).toBe(saved);
        // What is no feature has moved, and ids that are none were replaced: all else is there as it was.
        const before = JSON.parse(text) as { features: unknown[] };
        const after = JSON.parse(saved) as { features: unknown[] };
        const objects = before.features.filter(
          (f) => typeof f === 'object' && f !== null && !Array.isArray(f),
        );
        expect(after.features).toHaveLength(objects.length);
        // An edit of one feature touches nothing else.
        const [first] = survey.features;
        if (first)
          expect(setProperties(survey, first.id, { name: 'x' }).features.slice(1)).toEqual(
            survey.features.slice(1),
          );
      }),
      { seed, numRuns: cases(300) },
    );
    expect(run.failed, fc.defaultReportMessage(run)).toBe(false);
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  test('[X12] keys that other objects inherit are members like any other', () => {
    const text = `{"type":"FeatureCollection","sunside":{"version":1,"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}},
      "features":[{"type":"Feature","id":"__proto__","properties":{"kind":"standing-spot","__proto__":{"eyeHeight":9}},"geometry":{"type":"Point","coordinates":[8,47]}},
      {"type":"Feature","id":"__proto__","properties":{"kind":"constructor"},"geometry":null}]}`;
    const survey = opened(text);
    const [spot] = readContents(survey).spots;
    expect(spot).toMatchObject({ id: '__proto__', eyeHeight: 1.7 });
    expect(new Set(survey.features.map((f) => f.id)).size).toBe(2);
    const saved = saveSurvey(survey);
    expect(saved).toContain('"__proto__": {');
    expect(saved).toContain('"__proto__":{"eyeHeight":9}');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  test('[X13] numbers beyond any program, and words that are no JSON', () => {
    const at = (lng: string) =>
      surveyOf([
        `{"type":"Feature","id":"s","properties":{"kind":"standing-spot"},"geometry":{"type":"Point","coordinates":[${lng},47]}}`,
      ]);
    for (const lng of ['1e308', '-1e308', '1e999', '-1e999']) {
      const result = openSurvey(at(lng));
      const survey = opened(at(lng));
      expect(readContents(survey).spots).toEqual([]);
      expect(readContents(survey).problems.filter((p) => !p.used)).toHaveLength(1);
      expect(result.ok && result.problems.some((p) => p.reason.includes('larger than any program'))).toBe(
        lng.includes('999'),
      );
    }
    for (const word of ['NaN', 'Infinity', 'undefined', '0x10', '08'])
      expect(refusal(at(word))).toMatch(/^The file is not JSON: it breaks at line 1, column \d+\.$/);
  });

  test('[X14] nesting of 10,000 and more is refused in a sentence; 900 survive', () => {
    for (const deep of [nested(10_000), `${'{"a":'.repeat(10_000)}1${'}'.repeat(10_000)}`]) {
      const feature = `{"type":"Feature","id":"s","properties":{"kind":"standing-spot","x":${deep}},"geometry":null}`;
      expect(refusal(surveyOf([feature]))).toMatch(/more than 1000 deep/);
      expect(refusal(deep)).toMatch(/^(The file holds|At type: expected).{10,90}\.$/);
    }
    expect(refusal('['.repeat(1_000_000))).toMatch(/breaks off at line 1, column 1000001/);
    expect(refusal(`["${'a'.repeat(5_000_000)}`)).toMatch(/not JSON/);
    const text = surveyOf([`{"type":"Feature","id":"s","properties":{"x":${nested(900)}},"geometry":null}`]);
    expect(JSON.parse(saveSurvey(opened(text)))).toEqual(JSON.parse(text));
  });

  test('[X15] more of a kind than anyone draws: all is kept, the first are used, and that is said once', () => {
    const survey = opened(manyFeatures(3_000, 'standing-spot'));
    const { spots, problems } = readContents(survey);
    expect(survey.features).toHaveLength(3_002);
    expect(spots).toHaveLength(500);
    expect(problems).toEqual([
      {
        id: null,
        reason: '2500 more features of the kind "standing-spot": the first 500 are read',
        used: false,
      },
    ]);
    const many = openSurvey(manyFeatures(3_000, 'tree').replaceAll(/"id":"f\d+",/g, ''));
    expect(many.ok && many.problems).toHaveLength(1_001);
    expect(many.ok && many.problems.at(-1)?.reason).toBe('2000 more problems of this file are not listed.');
  });

  test('[X16] texts of megabytes stay in the file; their beginning is used, and that is said', () => {
    const name = 'n'.repeat(2_000_000);
    const text = surveyOf(
      [
        `{"type":"Feature","id":"s","properties":{"kind":"standing-spot","name":"${name}"},"geometry":{"type":"Point","coordinates":[8,47]}}`,
        `{"type":"Feature","id":"${name}","properties":{"kind":"${name}"},"geometry":{"type":"${name}"}}`,
        `{"type":"Feature","id":"${name}","properties":{"kind":"runway"},"geometry":{"type":"${name}"}}`,
      ],
      `"${name}"`,
    );
    const result = openSurvey(text);
    const contents = readContents(opened(text));
    expect(contents.spots[0]?.name).toBe('n'.repeat(300));
    expect(contents.site.name).toHaveLength(300);
    const said = [...(result.ok ? result.problems : []), ...contents.problems].map((p) => p.reason);
    expect(said.join()).toContain('name: 2000000 characters; the first 300 are used');
    for (const reason of said) expect(reason.length).toBeLessThan(200);
    expect(saveSurvey(opened(text))).toContain(name);
  });

  test('[X17] a feature with more positions than a day has seconds is refused, and says which', () => {
    const line = Array.from({ length: 200_001 }, (_, i) => `[8.${i},47]`).join(',');
    const text = surveyOf([
      `{"type":"Feature","id":"t","properties":{"kind":"taxi-route"},"geometry":{"type":"LineString","coordinates":[${line}]}}`,
    ]);
    expect(refusal(text)).toBe('At features.2: 200001 positions in one feature; up to 200000 can be shown.');
  });
});

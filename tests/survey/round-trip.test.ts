import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readContents } from '../../src/survey/contents';
import { deepFreeze } from '../../src/survey/freeze';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { opened } from '../support/contents';
import { surveyValue } from '../support/random-survey';

const seed = { seed: 7946, numRuns: 300 } as const;

/** Strict equality of JSON values: own members, `__proto__` included, whatever their order. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, child]) => [key, canonical(child)] as const);
  return entries.sort(([x], [y]) => (x < y ? -1 : 1));
}

describe('a survey goes through a file and comes back', () => {
  test('[S1] open, save, open: equal JSON values at every level, unknown kinds and members included', () => {
    fc.assert(
      fc.property(surveyValue, (value) => {
        const survey = opened(JSON.stringify(value));
        expect(canonical(survey)).toEqual(canonical(value));
        expect(canonical(JSON.parse(saveSurvey(survey)))).toEqual(canonical(value));
      }),
      seed,
    );
  });

  test('[S2] two saves of one survey are the same bytes, before and after opening', () => {
    fc.assert(
      fc.property(surveyValue, (value) => {
        const survey = opened(JSON.stringify(value));
        const text = saveSurvey(survey);
        expect(saveSurvey(survey)).toBe(text);
        expect(saveSurvey(opened(text))).toBe(text);
      }),
      seed,
    );
  });

  test('[S3] the order of features and members is that of the file', () => {
    const text = `{ "zebra": 1, "type": "FeatureCollection", "features": [
      { "properties": { "z": 1, "kind": "standing-spot", "a": 2 }, "id": "b", "extra": true, "type": "Feature",
        "geometry": { "coordinates": [8, 47], "type": "Point" } },
      { "type": "Feature", "id": "a", "properties": null, "geometry": null } ],
      "sunside": { "kit": {}, "version": 1, "apple": [] } }`;
    const saved = JSON.parse(saveSurvey(opened(text))) as { features: object[]; sunside: object };
    expect(saved.features.map((f) => Object.keys(f))).toEqual([
      ['properties', 'id', 'extra', 'type', 'geometry'],
      ['type', 'id', 'properties', 'geometry'],
    ]);
    expect(Object.keys(saved.sunside)).toEqual(['kit', 'version', 'apple']);
    expect(Object.keys((saved.features[0] as { properties: object }).properties)).toEqual(['z', 'kind', 'a']);
  });

  test('[S4] reading the contents never fails and never changes the survey', () => {
    fc.assert(
      fc.property(surveyValue, (value) => {
        const survey = deepFreeze(opened(JSON.stringify(value)));
        const before = saveSurvey(survey);
        const contents = readContents(survey);
        expect(contents.kit.bodies.length).toBeGreaterThan(0);
        expect(contents.subject.length).toBeGreaterThan(0);
        expect(saveSurvey(survey)).toBe(before);
      }),
      seed,
    );
  });

  test('[S5] deep values survive', () => {
    let deep: unknown = 'bottom';
    for (let i = 0; i < 500; i++) deep = i % 2 ? [deep] : { in: deep };
    const text = JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1 }, features: [], deep });
    expect(JSON.parse(saveSurvey(opened(text)))).toEqual(JSON.parse(text));
  });

  test('[S6] any text at all is opened or refused with a reason, never thrown at', () => {
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      surveyValue.map((v) => JSON.stringify(v).slice(0, -7)),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const result = openSurvey(text);
        expect(result.ok ? result.survey.type : result.reason.length > 10).toBeTruthy();
      }),
      seed,
    );
  });
});

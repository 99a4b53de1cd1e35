import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differences } from '../../src/merging/differences';
import { farthest } from '../../src/merging/farthest';
import { merge } from '../../src/merging/merge';
import type { Question } from '../../src/merging/questions';
import { sameJson } from '../../src/merging/same-json';
import type { Survey } from '../../src/survey/document';
import type { Json, JsonObject } from '../../src/survey/json';
import { saveSurvey } from '../../src/survey/save';
import { surveyValue } from '../support/random-survey';

type Feature = Survey['features'][number];

const at = (id: string, lng: number, lat: number, properties: JsonObject): Feature => ({
  type: 'Feature',
  id,
  properties,
  geometry: { type: 'Point', coordinates: [lng, lat] },
});
const spot = (id: string, more: JsonObject = {}, lng = 18.19, lat = 50.93) =>
  at(id, lng, lat, { kind: 'standing-spot', name: 'Orchard Path', eyeHeight: 1.7, ...more });
const runway = (id: string, line: Json, ends: Json, name = '07/25'): Feature => ({
  type: 'Feature',
  id,
  properties: { kind: 'runway', name, ends },
  geometry: { type: 'LineString', coordinates: line },
});
const survey = (features: readonly Feature[], sunside: JsonObject = {}): Survey => ({
  type: 'FeatureCollection',
  sunside: { version: 1, ...sunside },
  features,
});
const asked = (questions: readonly Question[]) => questions.map(({ id, pointer }) => [id, pointer]);

describe('[G1] two visits that nobody would argue about', () => {
  const base = survey([spot('s1', { notes: 'gate shut' })], { site: { elevation: 180, name: 'Tolverby' } });

  it('takes a change from whichever side made it, member by member', () => {
    const mine = survey([spot('s1', { notes: 'gate shut', eyeHeight: 3 })], {
      site: { elevation: 186, name: 'Tolverby' },
    });
    const theirs = survey([spot('s1', { notes: 'gate open again' })], {
      site: { elevation: 180, name: 'Tolverby Field' },
    });
    const { survey: merged, asked: questions } = merge(mine, theirs, { base });
    expect(questions).toEqual([]);
    expect(merged.features[0]?.properties).toMatchObject({ notes: 'gate open again', eyeHeight: 3 });
    expect(merged.sunside['site']).toEqual({ elevation: 186, name: 'Tolverby Field' });
  });

  it('follows a deletion where the other side left the thing alone', () => {
    const merged = merge(base, survey([], base.sunside), { base });
    expect(merged.survey.features).toEqual([]);
    expect(merged.deleted).toEqual(['s1']);
    expect(merged.asked).toEqual([]);
  });

  it('asks where one deleted what the other changed, and loses nothing meanwhile', () => {
    const changed = survey([spot('s1', { notes: 'gate open' })], base.sunside);
    for (const [mine, theirs] of [
      [changed, survey([], base.sunside)],
      [survey([], base.sunside), changed],
    ] as const) {
      const merged = merge(mine, theirs, { base });
      expect(asked(merged.open)).toEqual([['s1', '']]);
      expect(merged.survey.features.map(({ id }) => id)).toEqual(['s1']);
    }
    const dropped = merge(changed, survey([], base.sunside), { base, decide: () => 'theirs' });
    expect(dropped.survey.features).toEqual([]);
  });
});

describe('[G2] two visits that practitioners would argue about', () => {
  it('two people measured one eye height differently: a question with both values, and mine until it is answered', () => {
    const base = survey([spot('s1')]);
    const merged = merge(survey([spot('s1', { eyeHeight: 2 })]), survey([spot('s1', { eyeHeight: 11 })]), {
      base,
    });
    expect(merged.open).toEqual([
      { id: 's1', pointer: '/properties/eyeHeight', mine: 2, theirs: 11, base: 1.7 },
    ]);
    expect(merged.survey.features[0]?.properties?.['eyeHeight']).toBe(2);
  });

  it('both moved the spot: the place is one thing, never half of each', () => {
    const base = survey([spot('s1')]);
    const theirs = survey([spot('s1', {}, 18.1911)]);
    const merged = merge(survey([spot('s1', {}, 18.1905)]), theirs, { base, decide: () => 'theirs' });
    expect(asked(merged.asked)).toEqual([['s1', '/geometry']]);
    expect(merged.survey.features[0]?.geometry).toEqual(theirs.features[0]?.geometry);
  });

  it('a friend drew the same lay-by under another id, 9 m off: one spot, not two, and its name for the plan follows', () => {
    const mine = survey([spot('a1', { notes: '' }, 18.19)]);
    const theirs = survey([spot('b1', { notes: '' }, 18.19012)], {
      plan: { chosen: [{ spot: 'b1', path: 'r1/25/arrival', from: 'x', to: 'y' }] },
    });
    const merged = merge(mine, theirs);
    expect(merged.same).toEqual([{ mine: 'a1', theirs: 'b1', reversed: false }]);
    expect(merged.survey.features.map(({ id }) => id)).toEqual(['a1']);
    expect(merged.survey.sunside['plan']).toEqual({
      chosen: [{ spot: 'a1', path: 'r1/25/arrival', from: 'x', to: 'y' }],
    });
    expect(asked(merged.open)).toEqual([['a1', '/geometry']]);
  });

  it('a spot of the same name 40 m down the lane is another spot', () => {
    const merged = merge(survey([spot('a1')]), survey([spot('b1', {}, 18.19057)]));
    expect(merged.survey.features.map(({ id }) => id)).toEqual(['a1', 'b1']);
    expect(merged.asked).toEqual([]);
  });

  it('nameless things are never taken for one another', () => {
    const merged = merge(survey([spot('a1', { name: '' })]), survey([spot('b1', { name: '' })]));
    expect(merged.added).toEqual(['b1']);
  });

  it('a runway drawn from its other end is the same runway: its ends and the flow keep their meaning', () => {
    const line = [
      [18.1567, 50.9255],
      [18.1901, 50.9319],
    ];
    const ends = [
      { designator: '07', glide: 3 },
      { designator: '25', glide: 3 },
    ];
    const mine = survey([runway('a1', line, ends)]);
    const theirs = survey(
      [
        runway(
          'b1',
          [...line].reverse(),
          [
            { designator: '25', glide: 3.5 },
            { designator: '07', glide: 3 },
          ],
          '25/07',
        ),
      ],
      { flow: { configurations: [{ name: 'West', arrivals: [{ runway: 'b1', end: 0 }] }] } },
    );
    const merged = merge(mine, theirs, { decide: () => 'theirs' });
    expect(merged.survey.features).toHaveLength(1);
    expect(merged.survey.features[0]?.properties?.['ends']).toEqual([
      { designator: '07', glide: 3 },
      { designator: '25', glide: 3.5 },
    ]);
    expect(merged.survey.sunside['flow']).toEqual({
      configurations: [{ name: 'West', arrivals: [{ runway: 'a1', end: 1 }] }],
    });
  });

  it('two log entries at one place and time are two pictures', () => {
    const entry = (id: string) => at(id, 18.19, 50.93, { kind: 'log-entry', name: 'pass' });
    expect(merge(survey([entry('a1')]), survey([entry('b1')])).survey.features).toHaveLength(2);
  });
});

describe('[G3] lists with keys', () => {
  const kit = (...lenses: readonly JsonObject[]) => survey([], { kit: { lenses } });
  const lens = (key: string, longest: number) => ({ key, longest });

  it('merge entry by entry, mine first', () => {
    const merged = merge(kit(lens('a', 400)), kit(lens('b', 500), lens('a', 400)));
    expect(merged.survey.sunside['kit']).toEqual({ lenses: [lens('a', 400), lens('b', 500)] });
    expect(merged.asked).toEqual([]);
  });

  it('name the entry that differs by its place in mine', () => {
    const merged = merge(kit(lens('a', 400), lens('b', 500)), kit(lens('b', 600), lens('a', 400)));
    expect(asked(merged.open)).toEqual([
      [null, '/sunside/kit/lenses'],
      [null, '/sunside/kit/lenses/1/longest'],
    ]);
  });

  it('without keys a list is one value', () => {
    const merged = merge(kit({ longest: 400 }), kit({ longest: 500 }));
    expect(asked(merged.open)).toEqual([[null, '/sunside/kit/lenses']]);
  });
});

describe('[G4] whatever two files hold', () => {
  const pair = fc.tuple(surveyValue, surveyValue) as fc.Arbitrary<readonly [Survey, Survey]>;
  const three = fc.tuple(surveyValue, surveyValue, surveyValue) as fc.Arbitrary<
    readonly [Survey, Survey, Survey]
  >;
  const sorted = (s: Survey) => [...s.features].sort((a, b) => (a.id < b.id ? -1 : 1)) as unknown as Json;
  const settings = { numRuns: 200, seed: 20261128 };

  it('a survey merged with itself is itself, byte for byte', () => {
    fc.assert(
      fc.property(surveyValue as fc.Arbitrary<Survey>, (s) => {
        const merged = merge(s, structuredClone(s));
        expect(merged.asked).toEqual([]);
        expect(saveSurvey(merged.survey)).toBe(saveSurvey(s));
      }),
      settings,
    );
  });

  it('it does not matter who merges, up to the takes', () => {
    fc.assert(
      fc.property(three, ([base, a, b]) => {
        const ab = merge(a, b, { base, decide: () => 'mine' });
        const ba = merge(b, a, { base, decide: () => 'theirs' });
        if (ab.same.length > 0) return;
        expect(sameJson(ab.survey.sunside, ba.survey.sunside)).toBe(true);
        expect(sameJson(sorted(ab.survey), sorted(ba.survey))).toBe(true);
      }),
      settings,
    );
  });

  it('a side that changed nothing adds nothing, and nothing is asked', () => {
    fc.assert(
      fc.property(pair, ([base, changed]) => {
        const merged = merge(changed, base, { base });
        expect(merged.asked).toEqual([]);
        expect(saveSurvey(merged.survey)).toBe(saveSurvey(changed));
        const other = merge(base, changed, { base });
        expect(other.asked).toEqual([]);
        expect(sameJson(sorted(other.survey), sorted(changed))).toBe(true);
        expect(sameJson(other.survey.sunside, changed.sunside)).toBe(true);
      }),
      settings,
    );
  });

  it('without a base no feature and no unknown member is lost', () => {
    fc.assert(
      fc.property(pair, ([a, b]) => {
        const merged = merge(a, b);
        const ids = new Set(merged.survey.features.map(({ id }) => id));
        const renamed = new Set(merged.same.map(({ theirs }) => theirs));
        for (const { id } of [...a.features, ...b.features])
          expect(ids.has(id) || renamed.has(id)).toBe(true);
        for (const key of [...Object.keys(a), ...Object.keys(b)])
          expect(Object.hasOwn(merged.survey, key)).toBe(true);
        for (const question of merged.open) expect(sameJson(question.mine, question.theirs)).toBe(false);
      }),
      settings,
    );
  });
});

describe('[G11] both stay', () => {
  const mine = survey([spot('s1', { eyeHeight: 2 })], { plan: { chosen: [{ spot: 's1', path: 'p' }] } });
  const theirs = survey([spot('s1', { eyeHeight: 11 }, 18.191)], {
    plan: { chosen: [{ spot: 's1', path: 'q' }] },
  });
  const both = { beside: new Map([['s1', 'fresh']]) };

  it('of one spot that two people put in two places: each as it was, what each planned stays with its own', () => {
    for (const base of [null, survey([spot('s1')])]) {
      const { survey: merged, asked: questions } = merge(mine, theirs, { base, ...both });
      expect(asked(questions)).toEqual([]);
      expect(merged.features).toEqual([mine.features[0], { ...theirs.features[0], id: 'fresh' }]);
      expect(merged.sunside['plan']).toEqual({
        chosen: [
          { spot: 's1', path: 'p' },
          { spot: 'fresh', path: 'q' },
        ],
      });
    }
  });

  it('of a spot that both planned as they began: my plan stays where it was', () => {
    const plan = { plan: { chosen: [{ spot: 's1', path: 'p' }] } };
    const base = survey([spot('s1')], plan);
    const merged = merge(
      survey([spot('s1', { eyeHeight: 2 })], plan),
      survey([spot('s1', {}, 18.191)], plan),
      {
        base,
        ...both,
      },
    );
    expect(merged.survey.features.map(({ id }) => id)).toEqual(['s1', 'fresh']);
    expect(JSON.stringify(merged.survey.sunside['plan'])).toContain('"s1"');
  });
});

describe('[G12] where two values differ', () => {
  it('is named by the innermost member; a list, and what only one has, is one place', () => {
    const before = { a: { b: 1, 'c/d': [1, 2] }, e: 5 };
    const after = { a: { b: 1, 'c/d': [1] }, f: { g: 6 } };
    expect(differences(before, after)).toEqual(['/a/c~1d', '/e', '/f']);
    expect(differences(before, { e: 5, a: { 'c/d': [1, 2], b: 1 } })).toEqual([]);
  });
});

describe('[G13] how far apart two places are', () => {
  const line = (...coordinates: readonly (readonly number[])[]): Json => ({
    type: 'LineString',
    coordinates: coordinates as unknown as Json,
  });
  it('is what the corner that moved most has moved; lines of different corners say nothing', () => {
    // One thousandth of a degree of latitude at 51 degrees north: 111.26 m (WGS84's meridian arc).
    expect(farthest(line([18, 51], [18, 52]), line([18, 51.0001], [18, 52.001]))).toBeCloseTo(111.27, 1);
    expect(farthest(line([18, 51], [18, 52]), line([18, 51]))).toBeNull();
    expect(farthest(undefined, line([18, 51]))).toBeNull();
  });
});

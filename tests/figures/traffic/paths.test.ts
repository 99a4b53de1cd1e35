import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { inUse } from '../../../src/figures/traffic/in-use';
import { fieldElevation, pathsOf } from '../../../src/figures/traffic/paths';
import { stationsBetween } from '../../../src/figures/traffic/samples';
import { contentsOf, feature, plainSubject, runwayFeature } from '../../support/contents';

const a = [8.5, 47.4] as const;
const to = (bearing: number, distance: number) => destination(a, bearing, distance);
const all = () => true;

const long = runwayFeature('long', a, to(140, 3000), [
  { designator: '14', closed: true },
  { designator: '32' },
]);
const short = runwayFeature('short', a, to(40, 800), [
  { designator: '04', elevation: 431 },
  { designator: '22', elevation: 435 },
]);
const twins = runwayFeature('twins', a, to(90, 1000), [{ designator: '09' }, { designator: '09' }]);
const drawn = feature('drawn', 'flight-path', 'LineString', [a, to(10, 500)], {
  name: 'low pass',
  heights: [500, 480],
});

describe('the paths of a survey', () => {
  test('[F50] arrival, departure and circuit of every end that is not closed, then the flight paths', () => {
    const contents = contentsOf([drawn, long, short], { subjects: [plainSubject] });
    expect(pathsOf(contents, all, null).map((p) => p.ref.path)).toEqual([
      'long/32/arrival',
      'long/32/departure',
      'long/32/circuit',
      'short/04/arrival',
      'short/04/departure',
      'short/04/circuit',
      'short/22/arrival',
      'short/22/departure',
      'short/22/circuit',
      'drawn',
    ]);
    expect(pathsOf(contents, all, null).at(-1)).toMatchObject({
      name: 'low pass',
      ref: { runway: null, end: null },
    });
  });

  test('[F51] two ends of one designator are told apart by #0 and #1', () => {
    const paths = (feature: unknown) => pathsOf(contentsOf([feature]), (kind) => kind === 'arrival', null);
    expect(paths(twins).map((p) => p.ref.path)).toEqual(['twins/09#0/arrival', 'twins/09#1/arrival']);
    const nameless = runwayFeature('bare', a, to(90, 1000), [{}, {}]);
    expect(paths(nameless).map((p) => p.ref.path)).toEqual(['bare/#0/arrival', 'bare/#1/arrival']);
    expect(paths(nameless).map((p) => p.name)).toEqual(['end 1 arrival', 'end 2 arrival']);
  });

  test('[F52] only what is wanted', () => {
    const contents = contentsOf([long, short, drawn]);
    const wanted = pathsOf(
      contents,
      (kind, runway, end) => kind === 'departure' && runway === 'short' && end === 1,
      null,
    );
    expect(wanted.map((p) => p.ref)).toEqual([
      { path: 'short/22/departure', kind: 'departure', runway: 'short', end: 1 },
    ]);
  });

  test('[F53] a path is worked out once, and again when it, the subject or the field changes', () => {
    const subjects = [plainSubject, { ...plainSubject, key: 'other', height: 5 }];
    const contents = contentsOf([short, drawn], { subjects });
    const other = contents.subjects[1];
    if (!other) throw new Error('expected two subjects');
    for (const i of [0, 6]) {
      const path = (c = contents) => pathsOf(c, all, null)[i];
      const before = path();
      expect(path()).toBe(before);
      const after = path({ ...contents, subject: other });
      expect(after).not.toBe(before);
      // Half of the 4 m by which the other one is lower.
      expect((before?.samples.height[0] ?? NaN) - (after?.samples.height[0] ?? NaN)).toBeCloseTo(2, 9);
      expect(path({ ...contents, site: { ...contents.site, elevation: 500 } })).not.toBe(before);
    }
  });

  test('[F54] the field is as high as it says, else as its highest end', () => {
    expect(fieldElevation(contentsOf([short], { site: { elevation: 12 } }))).toBe(12);
    expect(fieldElevation(contentsOf([long, short]))).toBe(435);
    expect(fieldElevation(contentsOf([long]))).toBe(0);
  });

  test('[F55] a runway under 1 m has no paths', () => {
    expect(pathsOf(contentsOf([runwayFeature('dot', a, to(10, 0.5), [{}, {}])]), all, null)).toEqual([]);
    expect(pathsOf(contentsOf([runwayFeature('dash', a, to(10, 1.5), [{}, {}])]), all, null)).toHaveLength(6);
  });
});

describe('stations', () => {
  test('[F56] exact multiples of 20 m and both ends, each once, either way', () => {
    expect(stationsBetween(45, -33)).toEqual([45, 40, 20, 0, -20, -33]);
    expect(stationsBetween(40, -20)).toEqual([40, 20, 0, -20]);
    expect(stationsBetween(0, 61)).toEqual([0, 20, 40, 60, 61]);
    expect(stationsBetween(3, 17)).toEqual([3, 17]);
    expect(stationsBetween(7, 7)).toEqual([7]);
    expect(stationsBetween(-20 - 1e-9, 20 + 1e-9)).toHaveLength(3);
  });
});

describe('ends in use', () => {
  const sunside = {
    flow: {
      configurations: [
        { name: 'south', arrivals: [{ runway: 'long', end: 0 }], departures: [{ runway: 'short', end: 1 }] },
        { name: 'north', arrivals: [{ runway: 'long', end: 1 }] },
      ],
    },
  };

  test('[F57] those of the chosen configuration, the first when there is no such', () => {
    const contents = contentsOf([long, short], sunside);
    expect(inUse(contents, 1)).toMatchObject({
      name: 'north',
      stated: true,
      arrivals: [{ runway: 'long', end: 1 }],
      departures: [],
    });
    expect(inUse(contents, 0).departures).toEqual([{ runway: 'short', end: 1 }]);
    expect(inUse(contents, 7).name).toBe('south');
  });

  test('[F58] without configurations the first open end of the longest runway, said to be assumed', () => {
    const end = { runway: 'long', end: 1 };
    expect(inUse(contentsOf([short, long]), 0)).toEqual({
      arrivals: [end],
      departures: [end],
      stated: false,
      name: '',
    });
    const closed = runwayFeature('closed', a, to(5, 4000), [{ closed: true }, { closed: true }]);
    expect(inUse(contentsOf([closed, short]), 0).arrivals).toEqual([{ runway: 'short', end: 0 }]);
    expect(inUse(contentsOf([closed]), 0)).toMatchObject({ arrivals: [], departures: [], stated: false });
  });
});

import { describe, expect, it } from 'vitest';
import { verdictFor } from '../../../src/figures/optics/verdict';
import { lensToTake, spotSummary } from '../../../src/figures/summary/spot-summary';
import type { PathFromSpot, Sample, SpotFigures } from '../../../src/figures/types';
import type { Lens } from '../../../src/survey/schema/kit';

const lens = (key: string, shortest: number, longest: number, extenders: number[] = []): Lens => ({
  key,
  name: key,
  shortest,
  longest,
  widestAperture: 4,
  extenders,
});
const body = {
  key: 'body',
  name: 'body',
  sensorWidth: 23.5,
  sensorHeight: 15.6,
  pixelsWide: 6000,
  pixelsHigh: 4000,
};

const sample = (total: number, slantRange: number, focalLength: number | null = 300): Sample => ({
  station: 400,
  height: 30,
  onGround: false,
  groundRange: slantRange,
  slantRange,
  bearing: 170,
  elevation: 4,
  aspect: 80,
  speed: 60,
  focalLength,
  focalLength35: focalLength,
  lightAngle: 40,
  phaseAngle: 45,
  flankLit: true,
  light: 'front-lit',
  glare: false,
  sunNear: false,
  hiddenBy: null,
  score: { total, light: 1, reach: 1, aspect: 1, sight: 1, haze: 1 },
});

const path = (name: string, best: Sample, runs: readonly (readonly number[])[]): PathFromSpot => ({
  ref: { path: name, kind: 'arrival', runway: 'r', end: 0 },
  best,
  pass: best,
  closest: best,
  visibleShare: 1,
  hidden: [],
  through: [],
  glareShare: 0,
  sector: {
    runs: runs.map((focalLengths) => ({
      from: 0,
      bearings: focalLengths.map(() => 170),
      lightAngles: focalLengths.map(() => 40),
      glare: focalLengths.map(() => false),
      focalLengths,
      totals: focalLengths.map(() => best.score.total),
    })),
  },
});

const spot = (paths: readonly PathFromSpot[]): SpotFigures => ({
  id: 's',
  name: 'Spot',
  sun: { azimuth: 100, altitude: 20, geometricAltitude: 20 },
  sky: { direct: 1, visibility: 10_000 },
  ground: 400,
  groundFrom: 'runway',
  sunHiddenBy: null,
  runways: [],
  paths,
});
const twice = (...paths: PathFromSpot[]) => spotSummary(spot(paths), spot(paths));

describe('the range of focal lengths', () => {
  it('spans every run of the usable part', () => {
    const summary = twice(
      path('a', sample(0.5, 700), [
        [390, 240],
        [181, 260],
      ]),
    );
    expect(summary.paths[0]?.focalRange).toEqual({ shortest: 181, longest: 390 });
  });
  it('is null when nothing is usable', () => {
    expect(twice(path('a', sample(0.1, 9000), [])).paths[0]?.focalRange).toBeNull();
  });
});

describe('the path to wait at', () => {
  it('has the best point of all', () => {
    const summary = twice(
      path('low', sample(0.4, 300), [[200]]),
      path('high', sample(0.7, 800), [[380]]),
      path('middle', sample(0.6, 500), [[300]]),
    );
    expect(summary.leading?.ref.path).toBe('high');
  });
  it('goes by moment A, not by B', () => {
    const at = (one: number, other: number) =>
      spot([path('one', sample(one, 400), [[200]]), path('other', sample(other, 500), [[300]])]);
    expect(spotSummary(at(0.3, 0.6), at(0.9, 0.2)).leading?.ref.path).toBe('other');
  });
  it('is the nearest one at night, when all scores are nothing', () => {
    const summary = twice(path('far', sample(0, 900), [[400]]), path('near', sample(0, 450), [[210]]));
    expect(summary.leading?.ref.path).toBe('near');
  });
  it('is never one that is out of reach', () => {
    const summary = twice(path('out', sample(0.05, 4000), []), path('in', sample(0.02, 900), [[410]]));
    expect(summary.leading?.ref.path).toBe('in');
    expect(twice(path('out', sample(0.05, 4000), [])).leading).toBeNull();
  });
});

it('refuses moments of different paths', () => {
  const one = spot([path('a', sample(0.5, 400), [[300]])]);
  const other = spot([path('b', sample(0.5, 400), [[300]])]);
  expect(() => spotSummary(one, other)).toThrow('expected a at both moments, got b');
});

describe('the lens to take', () => {
  const [short, long, bare] = [lens('short', 24, 70), lens('long', 100, 400, [1.4]), lens('bare', 200, 600)];
  const taken = (lenses: readonly Lens[], needed: number) =>
    lensToTake(
      lenses.map((l) => verdictFor(l, needed, body, 0.8)),
      0.8,
    )?.lens.key;

  it('fits, rather without extender', () => {
    expect(taken([short, long], 550)).toBe('long');
    expect(taken([short, long, bare], 550)).toBe('bare');
  });
  it('loses least when none fits', () => {
    expect(taken([short, long, lens('middle', 70, 200)], 900)).toBe('long');
    expect(taken([bare, long], 70)).toBe('long');
  });
  it('is none without a lens', () => {
    expect(lensToTake([], 0.8)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { isFlat } from '../../../src/figures/light/sky';
import type { LightClass, PathFromSpot, SpotFigures } from '../../../src/figures/types';
import { legendEntries } from '../../../src/ui/light/legend-entries';

const path = (light: LightClass, runs: number, glareShare: number): PathFromSpot => {
  const sample = {
    station: 0,
    height: 20,
    onGround: false,
    groundRange: 500,
    slantRange: 501,
    bearing: 100,
    elevation: 2,
    aspect: 90,
    speed: 60,
    focalLength: 300,
    focalLength35: 300,
    lightAngle: 70,
    phaseAngle: 70,
    flankLit: true,
    light,
    glare: false,
    sunNear: false,
    hiddenBy: null,
    score: { total: 0, light: 0, reach: 0, aspect: 0, sight: 0, haze: 0 },
  };
  const run = {
    from: 0,
    bearings: [100],
    lightAngles: [70],
    glare: [false],
    focalLengths: [300],
    totals: [0.9],
  };
  return {
    ref: { path: 'p', kind: 'arrival', runway: 'r', end: 0 },
    closest: sample,
    best: sample,
    pass: sample,
    visibleShare: 1,
    hidden: [],
    through: [],
    glareShare,
    sector: { runs: Array.from({ length: runs }, () => run) },
  };
};
const figures = (...paths: PathFromSpot[]): SpotFigures => ({
  id: 's',
  name: '',
  sun: { azimuth: 1, altitude: 2, geometricAltitude: 2 },
  sky: { direct: 1, visibility: 10_000 },
  ground: 0,
  groundFrom: 'site',
  sunHiddenBy: null,
  runways: [],
  paths,
});
const nothing = { litSides: [], spots: [], focalLengths: null };
const entriesOf = (
  there: Partial<Parameters<typeof legendEntries>[0] & Parameters<typeof legendEntries>[1]>,
) => {
  const all = { ...nothing, ...there };
  return legendEntries(all, all, isFlat);
};

it('is empty on an empty map', () => {
  expect(entriesOf({})).toEqual({
    litSides: false,
    light: false,
    flat: false,
    twilight: false,
    dark: false,
    glare: false,
    focal: null,
    outOfReach: false,
    hidden: false,
  });
});

describe('rings', () => {
  it('name the light of either moment', () => {
    const spots = [{ a: figures(path('side-lit', 1, 0)), b: figures(path('dark', 1, 0)) }];
    expect(entriesOf({ spots })).toMatchObject({
      light: true,
      dark: true,
      twilight: false,
      glare: false,
    });
  });
  it('name glare where some of it is drawn', () => {
    const spots = [{ a: figures(path('back-lit', 1, 0.02)), b: figures(path('front-lit', 1, 0)) }];
    expect(entriesOf({ spots }).glare).toBe(true);
  });
  it('name nothing for a path that is out of reach', () => {
    const spots = [{ a: figures(path('front-lit', 0, 0)), b: figures(path('civil-twilight', 0, 0)) }];
    expect(entriesOf({ spots })).toMatchObject({ light: false, twilight: false });
  });
});

it('[U960] names flat light where a sky without sun makes it so by day, and the ramp only where the sun shines', () => {
  const overcast = { direct: 0, visibility: 3_000 };
  const grey = (p: PathFromSpot) => ({ ...figures(p), sky: overcast });
  const day = path('front-lit', 1, 0);
  const entries = (a: SpotFigures, b: SpotFigures) => entriesOf({ spots: [{ a, b }] });
  expect(entries(grey(day), grey(day))).toMatchObject({ flat: true, light: false });
  expect(entries(grey(day), figures(day))).toMatchObject({ flat: true, light: true });
  expect(entries(grey(path('dark', 1, 0)), figures(day))).toMatchObject({ flat: false, light: true });
});

describe('paths', () => {
  it('name the steps that are drawn, and what is out of reach', () => {
    const focalLengths = [Float64Array.of(Infinity, 590, 410), Float64Array.of(95, 180)];
    const { focal, outOfReach } = entriesOf({ focalLengths });
    expect(focal?.map((e) => e.label)).toEqual(['to 100 mm', '100–200 mm', 'over 400 mm']);
    expect(outOfReach).toBe(true);
  });
  it('counts what a long lens reaches to the last step', () => {
    const { focal, outOfReach } = entriesOf({ focalLengths: [Float64Array.of(850)] });
    expect(focal?.map((e) => e.label)).toEqual(['over 400 mm']);
    expect(outOfReach).toBe(false);
  });
});

it('names the lit sides while one of them is drawn', () => {
  const side = (a: string | null, b: string | null) => [{ a: { side: a }, b: { side: b } }];
  expect(entriesOf({ litSides: side(null, 'south') }).litSides).toBe(true);
  expect(entriesOf({ litSides: side(null, null) }).litSides).toBe(false);
});

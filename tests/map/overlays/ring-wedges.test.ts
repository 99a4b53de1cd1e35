import { describe, expect, test } from 'vitest';
import type { SectorRun, Sun } from '../../../src/figures/types';
import { ringColour, sweepsOf } from '../../../src/map/overlays/ring-wedges';
import { darkColour, faded, flatColour, lightColour, twilightColour } from '../../../styles/ramps';

const sun = (geometricAltitude: number): Sun => ({
  azimuth: 100,
  altitude: geometricAltitude,
  geometricAltitude,
});
const run = (bearings: number[], lightAngles: number[], glare: boolean[] = [], total = 0.9): SectorRun => ({
  from: 0,
  bearings,
  lightAngles,
  glare: bearings.map((_, i) => glare[i] ?? false),
  focalLengths: bearings.map((_, i) => 200 + i),
  totals: bearings.map(() => total),
});
const clear = { direct: 1, visibility: 10_000 };
const overcast = { direct: 0, visibility: 3_000 };
const up = { sun: sun(20), sky: clear };
const sweeps = (one: SectorRun, other: SectorRun = one) => sweepsOf(one, other, up, up);

describe('wedges of a light ring', () => {
  test('neighbours of one colour are one wedge, cut half-way to the next colour', () => {
    const [sweep] = sweeps(run([350, 356, 2, 8], [10, 20, 70, 75]));
    expect(sweep?.a.map((w) => w.colour)).toEqual([lightColour(20), lightColour(70)]);
    const [first, second] = sweep?.a ?? [];
    expect([first?.edges[0], first?.edges.at(-1)]).toEqual([350, 359]);
    expect([second?.edges[0], second?.edges.at(-1)]).toEqual([359, 368]);
  });

  test('corners lie at most 5 degrees apart', () => {
    const [sweep] = sweeps(run([10, 32, 33], [10, 11, 12]));
    const edges = sweep?.a[0]?.edges ?? [];
    expect([edges[0], edges.at(-1)]).toEqual([10, 33]);
    edges.slice(1).forEach((edge, i) => expect(edge - (edges[i] as number)).toBeLessThanOrEqual(5));
  });

  test('glare is a wedge of its own', () => {
    const [sweep] = sweeps(run([10, 20, 30], [170, 170, 170], [false, true, true]));
    expect(sweep?.a.map((w) => w.glare)).toEqual([false, true]);
  });

  test('the two moments are cut each by its own light', () => {
    const [sweep] = sweeps(run([10, 20, 30], [10, 10, 10]), run([10, 20, 30], [10, 100, 170]));
    expect(sweep?.a).toHaveLength(1);
    expect(sweep?.b.map((w) => w.colour)).toEqual([10, 100, 170].map(lightColour));
  });

  test('an aircraft that passes overhead leaves the bearings between out', () => {
    const parts = sweeps(run([88, 89, 268, 270], [40, 40, 120, 120]));
    expect(parts.map((s) => [s.edges[0], s.edges.at(-1)])).toEqual([
      [87, 90],
      [267.5, 270.5],
    ]);
  });

  test('where the bearings turn back a new sweep begins', () => {
    const parts = sweeps(run([10, 30, 50, 40, 20], [10, 10, 10, 10, 10]));
    expect(parts.map((s) => [s.edges[0], s.edges.at(-1)])).toEqual([
      [10, 50],
      [50, 20],
    ]);
    expect(parts[0]?.focalLength).toBe(200);
  });

  test('a single sample still shows', () => {
    const [sweep] = sweeps(run([45], [10]));
    expect([sweep?.edges[0], sweep?.edges.at(-1)]).toEqual([43.5, 46.5]);
  });

  test('with the sun down there is no light angle to colour by', () => {
    const at = (altitude: number) => ringColour(10, 0.9, false, { sun: sun(altitude), sky: clear });
    expect([-6.01, -5.99, -0.84, -0.82].map(at)).toEqual([
      darkColour,
      twilightColour,
      twilightColour,
      lightColour(10),
    ]);
  });

  test('[M300] a ring pales where the word changes: 0.76 is good, 0.74 fair, 0.59 poor, 0.39 not worth the wait', () => {
    const at = (total: number) => ringColour(10, total, false, up);
    expect(at(0.76)).toBe(lightColour(10));
    expect(at(0.74)).toBe(faded(lightColour(10), 'fair'));
    expect(at(0.59)).toBe(faded(lightColour(10), 'poor'));
    expect(at(0.39)).toBe(faded(lightColour(10), 'not worth waiting for'));
    // A bound that is met holds, as in the words.
    expect(at(0.75)).toBe(at(0.76));
  });

  test('[M301] overcast at noon: one grey all round, however the sun stands to the aircraft; at dusk twilight as ever', () => {
    const noon = { sun: sun(50), sky: overcast };
    expect(new Set([5, 80, 170].map((angle) => ringColour(angle, 0.65, false, noon)))).toEqual(
      new Set([faded(flatColour, 'fair')]),
    );
    expect(ringColour(5, 0, false, { sun: sun(-3), sky: overcast })).toBe(twilightColour);
  });

  test('[M302] glare keeps its dark colour, so that its hatching shows: it warns, whatever the picture is worth', () => {
    expect(ringColour(170, 0.1, true, up)).toBe(lightColour(170));
    const [sweep] = sweeps(run([10, 20, 30], [170, 170, 170], [false, true, true], 0.1));
    expect(sweep?.a.map((w) => w.colour)).toEqual([
      faded(lightColour(170), 'not worth waiting for'),
      lightColour(170),
    ]);
  });
});

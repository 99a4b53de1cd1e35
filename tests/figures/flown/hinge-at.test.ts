import { describe, expect, it } from 'vitest';
import { learnFrom } from '../../../src/figures/flown/learn';
import { hingeAt } from '../../../src/figures/flown/hinge-at';
import { contentsOf } from '../../support/contents';
import {
  arrivalOf24,
  departureOf06,
  drifting,
  madeFlight,
  madeRunway,
  type MadePoint,
} from '../../support/made-flights';

const flights = 15;
const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 0 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 0 };
/** The glide meets the rolling height where (21 - 5) / (tan 3.2 degrees - slope of the pavement) is flown. */
const touchdown = 16 / (Math.tan((3.2 * Math.PI) / 180) - 6 / 2400);

const learned = (of: (seed: number) => readonly MadePoint[]) =>
  learnFrom(
    contentsOf([
      madeRunway.feature,
      ...Array.from({ length: flights }, (_, i) => madeFlight(`f${i}`, of(i + 1))),
    ]),
  ).flown[0];

/** How often a recorder writes, in s, and how its heights wander: m of quick noise, m of slow noise over some 20 s. */
const recorders = [
  ['dense and quiet', 0.2, 0.3, 0, 12],
  ['sparse and quiet', 4, 0.3, 0, 15],
  ['dense and noisy', 0.2, 1.5, 0, 20],
  ['sparse and noisy', 2, 1.5, 0, 40],
  ['dense and wandering', 0.2, 0.3, 3, 40],
  ['sparse and wandering', 2, 0.5, 3, 45],
] as const;

describe('[L110] touchdown and lift-off come back from what recorders make of them', () => {
  it.each(recorders)('%s', (_, every, quick, slow, within) => {
    const recorded = (points: readonly MadePoint[], seed: number) =>
      drifting(points, { quick, slow, over: 20, seed });
    const down = learned((seed) => recorded(arrivalOf24({ ...arrival, every, seed }), seed))?.touchdown;
    expect(Math.abs((down?.median ?? NaN) - touchdown)).toBeLessThan(within);
    expect((down?.high ?? NaN) - (down?.low ?? NaN)).toBeLessThan(4 * within);
    const up = learned((seed) => recorded(departureOf06({ ...departure, every, seed }), seed))?.liftOff;
    expect(Math.abs((up?.median ?? NaN) - 1280)).toBeLessThan(within);
  });

  it('a datum that is wrong by 8 m moves neither: both sides are wrong alike', () => {
    const shifted = (points: readonly MadePoint[], seed: number) =>
      drifting(points, { quick: 0.5, slow: 0, over: 20, seed }).map((p) => ({
        ...p,
        height: p.height - 8,
      }));
    const down = learned((seed) => shifted(arrivalOf24({ ...arrival, every: 1, seed }), seed))?.touchdown;
    expect(Math.abs((down?.median ?? NaN) - touchdown)).toBeLessThan(20);
    const up = learned((seed) => shifted(departureOf06({ ...departure, every: 1, seed }), seed))?.liftOff;
    expect(Math.abs((up?.median ?? NaN) - 1280)).toBeLessThan(20);
  });

  it('a float is told by heights that know it, and by those that wander it is not made up', () => {
    const floated = (slow: number) => (seed: number) =>
      drifting(
        arrivalOf24({ ...arrival, every: 0.2, seed }).map((p) => {
          // The last 200 m of the glide and 250 m beyond it, rounded to end level.
          const share = (2100 - p.along - touchdown + 200) / 450;
          return share < 0 || share > 1
            ? p
            : { ...p, height: 180 + (6 * p.along) / 2400 + 5 + 10 * (1 - share) ** 2 };
        }),
        { quick: 0.2, slow, over: 20, seed },
      );
    const known = learned(floated(0))?.touchdown?.median;
    expect(known).toBeGreaterThan(touchdown + 80);
    expect(known).toBeLessThan(touchdown + 250);
    const wandering = learned(floated(3))?.touchdown?.median;
    expect(wandering).toBeGreaterThan(touchdown - 45);
    expect(wandering).toBeLessThan(touchdown + 250);
  });

  it('three recorders of fifteen that jump by 30 m on the runway do not move the median', () => {
    const jumping = (seed: number) =>
      arrivalOf24({ ...arrival, noise: 0.5, every: 1, seed }).map((p) =>
        seed <= 3 && p.along < 1700 ? { ...p, height: p.height - 30 } : p,
      );
    const down = learned(jumping)?.touchdown;
    expect(Math.abs((down?.median ?? NaN) - touchdown)).toBeLessThan(20);
  });
});

describe('[L111] a hinge needs both of its sides', () => {
  const ramp = (way: number) => Math.max(0, (way - 1000) * 0.05);
  const way = Array.from({ length: 31 }, (_, i) => i * 100);

  it('a ramp from 1,000 m on is found from a guess that is 300 m off', () => {
    expect(hingeAt(way, way.map(ramp), 1300)?.at).toBeCloseTo(1000, 6);
  });

  it('without a stretch on the ground, without one in the air, or without a rise, nobody knows', () => {
    const part = (from: number, to: number) => way.filter((w) => w >= from && w <= to);
    expect(hingeAt(part(900, 3000), part(900, 3000).map(ramp), 1000)).toBeNull();
    expect(hingeAt(part(0, 1200), part(0, 1200).map(ramp), 1000)).toBeNull();
    expect(
      hingeAt(
        way,
        way.map(() => 5),
        1000,
      ),
    ).toBeNull();
  });
});

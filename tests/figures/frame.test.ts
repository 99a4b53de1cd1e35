import { describe, expect, test } from 'vitest';
import { viewPoint } from '../../src/figures/frame/from-eye';
import { cameraOn, poseAt } from '../../src/figures/frame/pose';
import { sceneryRound } from '../../src/figures/frame/scenery';
import { destination } from '../../src/figures/geometry/earth';
import { outlookOf } from '../../src/figures/outlook';
import { terrainOf } from '../../src/figures/sight/grounded';
import { pathsOf } from '../../src/figures/traffic/paths';
import { flown } from '../../src/ui/viewfinder/fly';
import { contentsOf, feature, plainSubject, runwayFeature, spotFeature } from '../support/contents';

const a = [8.5, 47.4] as const;
const at = (bearing: number, distance: number) => destination(a, bearing, distance);
const contents = contentsOf(
  [
    runwayFeature('rwy', at(0, 400), destination(at(0, 400), 90, 2000), [
      { designator: '09', elevation: 430 },
      { designator: '27', elevation: 450 },
    ]),
    spotFeature('s', a, { ground: 420, eyeHeight: 2 }),
    feature('fence', 'obstacle', 'LineString', [at(350, 20), at(10, 20)], { height: 3, sight: 'mesh' }),
    feature('taxi', 'taxi-route', 'LineString', [at(0, 300), at(60, 300)]),
  ],
  { subjects: [plainSubject] },
);
const [spot] = contents.spots;
if (!spot) throw new Error('expected a spot');
const view = viewPoint(spot, 420);
const [arrival] = pathsOf(contents, (kind) => kind === 'arrival', null);
if (!arrival) throw new Error('expected an arrival');

describe('what a viewfinder sees, as numbers', () => {
  test('[F316] the pose between two samples lies between them, its axes square', () => {
    const [one, other, half] = [10, 11, 10.5].map((i) => poseAt(arrival.samples, i, view));
    if (!one || !other || !half) throw new Error('expected poses');
    for (const k of [0, 1, 2] as const) expect(half.at[k]).toBeCloseTo((one.at[k] + other.at[k]) / 2, 6);
    const product = (p: readonly number[], q: readonly number[]) =>
      p.reduce((sum, x, i) => sum + x * (q[i] ?? 0), 0);
    expect(product(half.forward, half.up)).toBeCloseTo(0, 9);
    expect(product(half.forward, half.left)).toBeCloseTo(0, 9);
    // Landing to the east: left is north; the nose is 3 degrees up.
    expect(half.left[1]).toBeCloseTo(1, 3);
    expect(half.forward[2]).toBeCloseTo(Math.sin((3 * Math.PI) / 180), 2);
  });

  test('[F317] the camera is level below 75 degrees and rolled along the fuselage above', () => {
    const pose = poseAt(arrival.samples, 10, view);
    expect(cameraOn(pose).right[2]).toBe(0);
    const overhead = cameraOn({ ...pose, at: [3, 4, 100] });
    const along = overhead.right.reduce((sum, x, i) => sum + x * (pose.forward[i] ?? 0), 0);
    expect(Math.abs(along)).toBeGreaterThan(0.98);
  });

  test('[F318] ground, pavements and obstacles stand where they are', () => {
    const { ground, runways, taxiRoutes, blocks } = sceneryRound(view, contents, 430);
    expect(ground.points[0]).toEqual([0, 0, -2]);
    // The first ring is the spot's own ground, far ones that of the runway, which rises to the east.
    for (const [, , up] of ground.points.slice(1, 1 + ground.spokes)) expect(up).toBeCloseTo(-2, 3);
    const [strip] = runways;
    expect(strip?.left[0]?.[0]).toBeCloseTo(0, 1);
    expect(strip?.left[0]?.[1]).toBeCloseTo(415, 0);
    expect(strip?.right[0]?.[1]).toBeCloseTo(385, 0);
    expect(strip?.left[0]?.[2]).toBeCloseTo(430 - 422, 1);
    expect(strip?.left.at(-1)?.[2]).toBeCloseTo(450 - 422, 0);
    expect(taxiRoutes[0]?.left).toHaveLength(2);
    const [fence] = blocks;
    expect(fence).toMatchObject({ id: 'fence', closed: false, looks: 'wires' });
    expect((fence?.top[0]?.[2] ?? 0) - (fence?.foot[0]?.[2] ?? 0)).toBeCloseTo(3, 3);
  });

  test('[F974] with terrain an obstacle and a taxi route stand where the figures have them, a runway where the survey states it', () => {
    // Level ground, 12 m above the pavement that the survey states: as a coarse model may be.
    const grid = {
      columns: 60,
      rows: 60,
      west: a[0] - 0.03,
      north: a[1] + 0.03,
      stepLng: 0.001,
      stepLat: 0.001,
      heights: new Float32Array(3600).fill(462),
    };
    const terrain = terrainOf(contents, grid);
    const { runways, taxiRoutes, blocks, ground } = sceneryRound(view, contents, 430, terrain);
    expect(blocks[0]?.foot[0]?.[2]).toBeCloseTo(462 - 422, 2);
    expect(taxiRoutes[0]?.left[0]?.[2]).toBeCloseTo(462 - 422, 1);
    expect(runways[0]?.left[0]?.[2]).toBeCloseTo(430 - 422, 1);
    // The spot's own ground is what it states, farther out the terrain's.
    expect(ground.points[1]?.[2]).toBeCloseTo(-2, 3);
    expect(ground.points[1 + 6 * ground.spokes]?.[2]).toBeCloseTo(462 - 422, 0);
    // The same foot as the sight lines have it.
    const { around } = outlookOf(contents, grid);
    expect(around?.tops[0]?.edges[2]).toBeCloseTo(462 + 3, 2);
  });

  test('[F319] flying by takes as long as the aircraft does', () => {
    const { samples } = arrival;
    // 20 m samples at 70 m/s.
    expect(flown(samples, 5, 1) - 5).toBeCloseTo(70 / 20, 6);
    expect(flown(samples, 5, 1e6)).toBe(samples.count - 1);
    expect(flown(samples, samples.count - 1, 5)).toBe(samples.count - 1);
  });
});

import { frameAt } from '../../src/figures/geometry/earth';
import { surroundings, standing, type Surroundings } from '../../src/figures/sight/surroundings';
import { SightLines } from '../../src/figures/sight/sight-lines';
import type { Targets } from '../../src/figures/sight/targets';
import { terrainIn, type ElevationGrid } from '../../src/figures/sight/terrain';
import type { Position } from '../../src/survey/document';
import { contentsOf } from './contents';

export const middle: Position = [8.5, 47.4];
export const frame = frameAt(middle);

/** What stands about the reference, with another sinking (m for each squared m) where a source has its own. */
export function about(
  features: readonly unknown[],
  sink?: number,
  grid: ElevationGrid | null = null,
): Surroundings {
  const { obstacles, runways } = contentsOf(features);
  const around = surroundings(obstacles, runways, 0, frame, grid && terrainIn(grid, frame));
  if (!around) throw new Error('expected something to look at');
  return sink === undefined ? around : { ...around, sink };
}

/** Points of the site frame as an aircraft whose three points are one. */
export const targetsAt = (points: readonly (readonly [x: number, y: number, z: number])[]): Targets => ({
  count: points.length,
  points: Float64Array.from(points.flatMap((p) => [...p, ...p, ...p])),
});

/** Whether a point of the site frame is in sight from an eye there. */
export function sees(
  around: Surroundings,
  eye: readonly [x: number, y: number, z: number],
  point: readonly [x: number, y: number, z: number],
  month = 1,
): boolean {
  const lines = new SightLines();
  const targets = targetsAt([point]);
  lines.stand(around, standing(around, month), ...eye, [targets], []);
  lines.look(targets);
  return lines.inSight[0] === 3;
}

/** The least height above mean sea level at (`x`, `y`) that is in sight, by bisection between 0 and 10 km. */
export function leastInSight(
  around: Surroundings,
  eye: readonly [x: number, y: number, z: number],
  x: number,
  y: number,
): number {
  let [low, high] = [-1000, 10_000];
  for (let i = 0; i < 60; i++) {
    const z = (low + high) / 2;
    if (sees(around, eye, [x, y, z])) high = z;
    else low = z;
  }
  return high;
}

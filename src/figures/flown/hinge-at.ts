import { spreadOf } from './percentile';
import { theilSen } from './theil-sen';

/** Where a flight's way into the air begins: `at` in m of its way; what the heights on the ground are there, and between which quartiles they lie apart, m. */
export interface Hinge {
  readonly at: number;
  readonly level: number;
  readonly apart: number;
}

/**
 * m to either side of the hinge that say nothing of it: flare and float, rotation. CP. Both lines are taken over `near` m
 * beyond, farther where points are few.
 */
const aside = 150;
const near = 1500;
const farthest = 4000;
/** Points that each side needs, and up to which it is taken farther than `near`. */
const least = 3;
const enough = 5;
/** The first guess is some hundred metres off; most second answers are within so many m of the first. */
const rounds = 3;
const settled = 1;

/**
 * Where the straight line of a flight near its runway meets the height at which it rolls: a hinge of two lines, each fitted
 * robustly by itself (the one in the air by Theil 1950 and Sen 1968, the level one by its median) and intersected. Heights of
 * recorders wander by metres within a minute, so the ground's height is taken next to the hinge, where both sides have
 * wandered alike, and no point is asked whether it is down already.
 *
 * `way`: m along the runway, growing from the ground into the air; `height`: m above the plane of the runway, whatever its
 * datum. Null where either side has too few points, or where it does not rise.
 */
export function hingeAt(way: readonly number[], height: readonly number[], guess: number): Hinge | null {
  let hinge: Hinge | null = null;
  for (let round = 0; round < rounds; round++) {
    const from = hinge?.at ?? guess;
    hinge = intersected(way, height, from);
    if (hinge === null || Math.abs(hinge.at - from) < settled) return hinge;
  }
  return hinge;
}

function intersected(way: readonly number[], height: readonly number[], hinge: number): Hinge | null {
  const air = beside(way, (w) => w - hinge);
  const ground = beside(way, (w) => hinge - w);
  if (air.length < least || ground.length < least) return null;
  const of = (list: readonly number[], indices: readonly number[]) => indices.map((i) => list[i] as number);
  const line = theilSen(of(way, air), of(height, air));
  const level = spreadOf(of(height, ground));
  if (line === null || line.slope <= 0 || level === null) return null;
  return {
    at: (level.median - line.intercept) / line.slope,
    level: level.median,
    apart: level.high - level.low,
  };
}

/** Indices of the points on one side within reach, or of the nearest ones where few are. */
function beside(way: readonly number[], distance: (way: number) => number): readonly number[] {
  const far = (i: number) => distance(way[i] as number);
  const within = (most: number) => [...way.keys()].filter((i) => far(i) >= aside && far(i) <= most);
  const close = within(near);
  if (close.length >= enough) return close;
  return within(farthest)
    .sort((a, b) => far(a) - far(b))
    .slice(0, enough);
}

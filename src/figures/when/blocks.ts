import { DEG, RAD, wrap180 } from '../geometry/angles';
import type { StillView } from './still-view';

/** Neighbouring samples that are passed over at once: few, since near the spot the direction turns fast. */
const blockSize = 4;

/** Numbers a block, and where each of them stands. */
export const blockEach = 12;
/** Samples from one index to another (excluded). */
export const blockFrom = 0;
export const blockTo = 1;
/** What none of the samples exceeds: greatest product of reach, aspect and sight. */
export const blockMost = 2;
/** Least product of the haze's two factors. */
export const blockHaze = 3;
/**
 * The level directions from the samples to the eye: their middle, and cosine and sine of how far the outermost is from it. No
 * cosine is below -2, which stands for "anywhere".
 */
export const blockEast = 4;
export const blockNorth = 5;
export const blockCosSpread = 6;
export const blockSinSpread = 7;
/** Normal of the flank at the first, and how far that of another may be from it; infinite where one shows no flank. */
export const blockFlankEast = 8;
export const blockFlankNorth = 9;
export const blockFlankUp = 10;
export const blockFlankSpread = 11;

type Arrays = Pick<
  StillView,
  | 'count'
  | 'east'
  | 'north'
  | 'most'
  | 'fromBelow'
  | 'haze'
  | 'flankEast'
  | 'flankNorth'
  | 'flankUp'
  | 'hasFlank'
>;

/** The blocks of a view, those that may hold the best sample first, in one array: a year asks for them a million times. */
export function blocksOf(still: Arrays): Float64Array {
  const blocks: Float64Array[] = [];
  for (let from = 0; from < still.count; from += blockSize)
    blocks.push(blockOf(still, from, Math.min(still.count, from + blockSize)));
  blocks.sort((a, b) => (b[blockMost] as number) - (a[blockMost] as number));
  const all = new Float64Array(blocks.length * blockEach);
  blocks.forEach((block, k) => all.set(block, k * blockEach));
  return all;
}

function blockOf(still: Arrays, from: number, to: number): Float64Array {
  const { east, north, most: each, fromBelow, haze: hazes, flankEast, flankNorth, flankUp, hasFlank } = still;
  const first = Math.atan2(-(east[from] as number), -(north[from] as number)) * DEG;
  let [most, low, high, level, haze, flankSpread] = [0, 0, 0, true, Infinity, 0];
  for (let i = from; i < to; i++) {
    most = Math.max(most, each[i] as number);
    const turned = wrap180(Math.atan2(-(east[i] as number), -(north[i] as number)) * DEG - first);
    low = Math.min(low, turned);
    high = Math.max(high, turned);
    level &&= fromBelow[i] === 0;
    haze = Math.min(haze, hazes[i] as number);
    const turn = Math.hypot(
      (flankEast[i] as number) - (flankEast[from] as number),
      (flankNorth[i] as number) - (flankNorth[from] as number),
      (flankUp[i] as number) - (flankUp[from] as number),
    );
    flankSpread = Math.max(flankSpread, hasFlank[i] === 1 ? turn : Infinity);
  }
  const middle = (first + (low + high) / 2) * RAD;
  // A pass right overhead turns the direction by half a circle between two samples, and from below the level angle is not what
  // counts: no bound then. Both spreads a little wider than they are, for what rounding takes away.
  const bounded = level && high - low < 90;
  const spread = ((high - low) / 2 + 1e-6) * RAD;
  return Float64Array.of(
    from,
    to,
    most,
    haze,
    Math.sin(middle),
    Math.cos(middle),
    bounded ? Math.cos(spread) : -2,
    bounded ? Math.sin(spread) : 0,
    flankEast[from] as number,
    flankNorth[from] as number,
    flankUp[from] as number,
    flankSpread + 1e-9,
  );
}

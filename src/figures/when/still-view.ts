import { DEG, RAD, wrap180 } from '../geometry/angles';
import { closestInSight } from '../best-in-view';
import { aspectAt, elevationAt, hasFlankAt, sinUnderside } from '../light-on-view';
import { alwaysClear, type SkyAt } from '../light/sky';
import type { Framing } from '../optics/framing';
import { reachFactor, type Reach } from '../optics/reach';
import { aspectFactor, hazeOf } from '../score';
import type { PathInView } from '../path-in-view';

/** Neighbouring samples that are passed over at once: few, since near the spot the direction turns fast. */
const blockSize = 4;

/** Samples from one index to another (excluded), and what none of them exceeds. */
export interface Block {
  readonly from: number;
  readonly to: number;
  /** Greatest product of reach, aspect and sight. */
  readonly most: number;
  /** The level directions from the samples to the eye: their middle, and how far the outermost is from it in degrees. */
  readonly east: number;
  readonly north: number;
  readonly spread: number;
  /** Whether light is classed by the level angle at all of them. */
  readonly level: boolean;
  /** Least product of the haze's two factors. */
  readonly haze: number;
  /** Normal of the flank at the first, and how far that of another may be from it; infinite where one shows no flank. */
  readonly flankEast: number;
  readonly flankNorth: number;
  readonly flankUp: number;
  readonly flankSpread: number;
}

/**
 * A path from a spot, kept: all of it that the sun does not change, one entry a sample. Plain typed arrays on
 * purpose: a year of light asks for tens of thousands of suns.
 */
export interface StillView {
  readonly count: number;
  /** The nearest sample in sight; of all, when none is. */
  readonly closest: number;
  /** The aircraft's centre from the eye, in m, and its level distance. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
  readonly range: Float64Array;
  readonly ground: Float64Array;
  /** Needed focal length in mm, NaN inside the aircraft. */
  readonly focal: Float64Array;
  /** Factors of the score that are the same in any light. */
  readonly reach: Float64Array;
  readonly aspect: Float64Array;
  readonly sight: Float64Array;
  /** Their product: what the total cannot exceed. */
  readonly most: Float64Array;
  /** What range and elevation do to the haze: its two factors. */
  readonly hazeRange: Float64Array;
  readonly hazeElevation: Float64Array;
  /** Normal of the flank on the eye's side, where one is seen. */
  readonly flankEast: Float64Array;
  readonly flankNorth: Float64Array;
  readonly flankUp: Float64Array;
  readonly hasFlank: Uint8Array;
  /** 1 where one looks at the underside. */
  readonly fromBelow: Uint8Array;
  /** Those that may hold the best sample first. */
  readonly blocks: readonly Block[];
  readonly framing: Framing;
  readonly kit: Reach;
  /** The sky that it is looked at under. */
  readonly skyAt: SkyAt;
  /** Whether the kit can use any sample at all, and whether any of those is at least partly in sight. */
  readonly usable: boolean;
  readonly inSight: boolean;
}

/** Keeps what `view` shows now. */
export function stillView(
  view: PathInView,
  framing: Framing,
  kit: Reach,
  skyAt: SkyAt = alwaysClear,
): StillView {
  const { count } = view;
  const array = () => new Float64Array(count);
  const still = {
    count,
    closest: closestInSight(view),
    east: view.east.slice(0, count),
    north: view.north.slice(0, count),
    up: view.up.slice(0, count),
    range: view.range.slice(0, count),
    ground: array(),
    focal: array(),
    reach: array(),
    aspect: array(),
    sight: array(),
    most: array(),
    hazeRange: array(),
    hazeElevation: array(),
    flankEast: array(),
    flankNorth: array(),
    flankUp: array(),
    hasFlank: new Uint8Array(count),
    fromBelow: new Uint8Array(count),
  };
  let [usable, inSight] = [false, false];
  for (let i = 0; i < count; i++) {
    const [e, n, u] = [still.east[i] as number, still.north[i] as number, still.up[i] as number];
    const range = still.range[i] as number;
    still.sight[i] = view.sightAt(i);
    const focal = view.focalAt(i);
    const haze = hazeOf(range, elevationAt(view, i));
    still.ground[i] = Math.sqrt(e * e + n * n);
    still.focal[i] = focal;
    const reach = Number.isNaN(focal) ? 0 : reachFactor(kit, focal);
    const aspect = aspectFactor(aspectAt(view, i));
    still.reach[i] = reach;
    still.aspect[i] = aspect;
    still.most[i] = reach * aspect * (still.sight[i] as number);
    still.hazeRange[i] = haze.range;
    still.hazeElevation[i] = haze.elevation;
    still.fromBelow[i] = u > sinUnderside * range ? 1 : 0;
    if (focal <= kit.usableTo) {
      usable = true;
      inSight ||= (still.sight[i] as number) > 0;
    }
    if (!hasFlankAt(view, i)) continue;
    still.hasFlank[i] = 1;
    // The eye sees the left flank when the aircraft's left points back at it.
    const sign = view.leftwardsAt(i, e, n, u) < 0 ? 1 : -1;
    still.flankEast[i] = sign * view.leftwardsAt(i, 1, 0, 0);
    still.flankNorth[i] = sign * view.leftwardsAt(i, 0, 1, 0);
    still.flankUp[i] = sign * view.leftwardsAt(i, 0, 0, 1);
  }
  return { ...still, blocks: blocksOf(still), framing, kit, skyAt, usable, inSight };
}

type Arrays = Pick<
  StillView,
  | 'count'
  | 'east'
  | 'north'
  | 'most'
  | 'fromBelow'
  | 'hazeRange'
  | 'hazeElevation'
  | 'flankEast'
  | 'flankNorth'
  | 'flankUp'
  | 'hasFlank'
>;

function blocksOf(still: Arrays): Block[] {
  const { count, east, north, most: each, fromBelow, hazeRange, hazeElevation } = still;
  const { flankEast, flankNorth, flankUp, hasFlank } = still;

  const blocks: Block[] = [];
  for (let from = 0; from < count; from += blockSize) {
    const to = Math.min(count, from + blockSize);
    const first = Math.atan2(-(east[from] as number), -(north[from] as number)) * DEG;
    let [most, low, high, level, haze, flankSpread] = [0, 0, 0, true, Infinity, 0];
    for (let i = from; i < to; i++) {
      most = Math.max(most, each[i] as number);
      const turned = wrap180(Math.atan2(-(east[i] as number), -(north[i] as number)) * DEG - first);
      low = Math.min(low, turned);
      high = Math.max(high, turned);
      level &&= fromBelow[i] === 0;
      haze = Math.min(haze, (hazeRange[i] as number) * (hazeElevation[i] as number));
      const turn = Math.hypot(
        (flankEast[i] as number) - (flankEast[from] as number),
        (flankNorth[i] as number) - (flankNorth[from] as number),
        (flankUp[i] as number) - (flankUp[from] as number),
      );
      flankSpread = Math.max(flankSpread, hasFlank[i] === 1 ? turn : Infinity);
    }
    // A pass right overhead turns the direction by half a circle between two samples: no bound then.
    const spread = high - low < 90 ? (high - low) / 2 : 180;
    const middle = (first + (low + high) / 2) * RAD;
    // Both spreads a little wider than they are, for what rounding takes away.
    blocks.push({
      from,
      to,
      most,
      east: Math.sin(middle),
      north: Math.cos(middle),
      spread: spread + 1e-6,
      level,
      haze,
      flankEast: flankEast[from] as number,
      flankNorth: flankNorth[from] as number,
      flankUp: flankUp[from] as number,
      flankSpread: flankSpread + 1e-9,
    });
  }
  return blocks.sort((a, b) => b.most - a.most);
}

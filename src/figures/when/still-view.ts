import { closestInSight } from '../best-in-view';
import { hasFlankAt, sinUnderside } from '../light-on-view';
import { alwaysClear, type SkyAt } from '../light/sky';
import type { Framing } from '../optics/framing';
import { reachFactor, type Reach } from '../optics/reach';
import { aspectFactorBy, hazeBy } from '../score';
import type { PathInView } from '../path-in-view';
import { blocksOf } from './blocks';

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
  /** What range and elevation do to the haze (`hazeOf`). */
  readonly haze: Float64Array;
  /** Level unit vector from the aircraft to the eye; NaN straight overhead. */
  readonly backEast: Float64Array;
  readonly backNorth: Float64Array;
  /** Normal of the flank on the eye's side, where one is seen. */
  readonly flankEast: Float64Array;
  readonly flankNorth: Float64Array;
  readonly flankUp: Float64Array;
  readonly hasFlank: Uint8Array;
  /** 1 where one looks at the underside. */
  readonly fromBelow: Uint8Array;
  /** Neighbouring samples in blocks (`blocksOf`). */
  readonly blocks: Float64Array;
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
    haze: array(),
    backEast: array(),
    backNorth: array(),
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
    const ground = Math.sqrt(e * e + n * n);
    still.ground[i] = ground;
    still.backEast[i] = ground > 0 ? -e / ground : NaN;
    still.backNorth[i] = ground > 0 ? -n / ground : NaN;
    still.focal[i] = focal;
    const reach = Number.isNaN(focal) ? 0 : reachFactor(kit, focal);
    const aspect = aspectFactorBy(view.cosAspectAt(i));
    still.reach[i] = reach;
    still.aspect[i] = aspect;
    still.most[i] = reach * aspect * (still.sight[i] as number);
    still.haze[i] = hazeBy(range, u / range);
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

import { glaresInto } from '../../figures/glare-on-view';
import { isFlat, mistFactor } from '../../figures/light/sky';
import { cosPhaseAt, hasFlankAt, sinUnderside } from '../../figures/light-on-view';
import { reachFactor } from '../../figures/optics/reach';
import type { Outlook } from '../../figures/outlook';
import type { PathInView } from '../../figures/path-in-view';
import { litFrom, worthwhileFrom } from '../../figures/practice';
import { angleFactorBy, aspectFactorBy, hazeBy, lightLeaving, slack } from '../../figures/score';
import type { LazySight } from '../lazy-sight';
import type { BestSoFar } from './best-so-far';
import { rowOf } from './dark-flanks';
import {
  atAltitude,
  atClearCeiling,
  atEach,
  atEast,
  atHaze,
  atLevelEast,
  atLevelNorth,
  atNorth,
  atUp,
  type InstantTable,
} from './instant-table';
import { limitSteps } from './light-limits';
import type { NeededShares } from './needed-shares';
import { pieceSize, type Pieces } from './pieces';
import type { SunInSight } from './sun-in-sight';
import type { MovingSun } from './sun-over';

/** What a place is weighed with: all of it belongs to the kernel, which moves it from place to place. */
export interface Weighed {
  readonly outlook: Outlook;
  readonly pieces: readonly Pieces[];
  readonly table: InstantTable;
  readonly best: BestSoFar;
  readonly needed: NeededShares;
  /** Null on open ground. */
  readonly sight: LazySight | null;
  readonly sunInSight: SunInSight | null;
}

/** The score of one sample at those instants at which it may matter, as `scoreAt` has it. */
export class Weigher {
  readonly #with: Weighed;
  /** Of the sample under work: see `itsHaze`. Its flank is square to it, towards the eye. */
  readonly #to = new Float64Array(7);
  #hasFlank = false;
  #isFromBelow = false;
  /** Whether it is straight above or below the eye, where there is no level direction. */
  #isAbove = false;

  constructor(weighed: Weighed) {
    this.#with = weighed;
  }

  /** Sample `i` of path `p` at the first `count` of some instants; whether it was the best, or good, at any. */
  weigh(p: number, i: number, passing: Int32Array, count: number, least: number): boolean {
    const view = (this.#with.pieces[p] as Pieces).viewAt(i);
    const j = i % pieceSize;
    const focal = view.focalAt(j);
    if (focal !== focal) return false;
    const reached = reachFactor(this.#with.outlook.reach, focal);
    const aspect = aspectFactorBy(view.cosAspectAt(j));
    if (reached * aspect * slack < least || reached === 0) return false;
    this.#look(view, j);
    return this.#score(view, j, p, i, passing, count, focal, reached, aspect);
  }

  /** Where the eye is from a sample, and which flank it sees, as `classAngleAt` and `flankLitAt` have it. */
  #look(view: PathInView, j: number): void {
    const to = this.#to;
    const e = view.east[j] as number;
    const n = view.north[j] as number;
    const u = view.up[j] as number;
    const range = view.range[j] as number;
    // Towards the eye: level, or in 3-D where one looks at the underside.
    const fromBelow = u > sinUnderside * range;
    const out = fromBelow ? range : Math.sqrt(e * e + n * n);
    this.#isFromBelow = fromBelow;
    this.#isAbove = out === 0;
    to[toEyeEast] = out > 0 ? -e / out : 0;
    to[toEyeNorth] = out > 0 ? -n / out : 0;
    to[toEyeUp] = fromBelow ? -u / out : 0;
    to[itsHaze] = hazeBy(range, u / range);
    this.#hasFlank = hasFlankAt(view, j);
    if (!this.#hasFlank) return;
    const sign = view.leftwardsAt(j, e, n, u) < 0 ? 1 : -1;
    to[flankEast] = sign * view.leftwardsAt(j, 1, 0, 0);
    to[flankNorth] = sign * view.leftwardsAt(j, 0, 1, 0);
    to[flankUp] = sign * view.leftwardsAt(j, 0, 0, 1);
  }

  #score(
    view: PathInView,
    j: number,
    p: number,
    i: number,
    passing: Int32Array,
    count: number,
    focal: number,
    reached: number,
    aspect: number,
  ): boolean {
    const { table, best, needed, sight } = this.#with;
    const { at, limits, suns } = table;
    const { shares, within, thrifty } = needed;
    const { worth, good } = best;
    const to = this.#to;
    const te = to[toEyeEast] as number;
    const tn = to[toEyeNorth] as number;
    const tu = to[toEyeUp] as number;
    const haze = to[itsHaze] as number;
    const flankE = to[flankEast] as number;
    const flankN = to[flankNorth] as number;
    const flankU = to[flankUp] as number;
    const hasFlank = this.#hasFlank;
    const isAbove = this.#isAbove;
    const toEast = this.#isFromBelow ? atEast : atLevelEast;
    const toNorth = this.#isFromBelow ? atNorth : atLevelNorth;
    const range = view.range[j] as number;
    const tables = table.tables[p] as Int32Array;
    const b = (i / pieceSize) | 0;
    const row = rowOf(b, (this.#with.pieces[p] as Pieces).side[b] as number, table.count);
    const first = p * table.count;
    let perShare = limitSteps / (reached * aspect * slack);
    let seen = -1;
    let told = false;
    for (let k = 0; k < count; k++) {
      const t = passing[k] as number;
      if (range >= (within[first + t] as number)) continue;
      const o = t * atEach;
      const clear = 1 - haze * (at[o + atHaze] as number);
      const step = ((shares[first + t] as number) * perShare) / clear;
      if (step > limitSteps) continue;
      const cos = isAbove
        ? 1
        : te * (at[o + toEast] as number) + tn * (at[o + toNorth] as number) + tu * (at[o + atUp] as number);
      if (cos < (limits[(tables[row + t] as number) + (step | 0)] as number)) continue;
      const { sky } = suns[t] as MovingSun;
      const hazed = clear * mistFactor(range, sky);
      const toSun =
        flankE * (at[o + atEast] as number) +
        flankN * (at[o + atNorth] as number) +
        flankU * (at[o + atUp] as number);
      const light = lightLeaving(
        at[o + atClearCeiling] as number,
        at[o + atAltitude] as number,
        angleFactorBy(cos),
        hasFlank ? toSun > litFrom : null,
        sky,
      );
      const open = light * reached * aspect * hazed;
      const isGoodAlready = good[first + t] === 1;
      const before = worth[t] as number;
      if (open < (thrifty ? best.most : before) && (isGoodAlready || open < worthwhileFrom)) continue;
      if (seen < 0) {
        seen = sight ? sight.at(p, i) : 1;
        if (seen === 0) break;
        // From here on the half-hidden one must be the better for it.
        perShare /= seen;
      }
      // In the order of `scoreAt`, so that not even rounding differs.
      const total = light * reached * aspect * seen * hazed;
      if (total > before || (total === before && total > 0 && range < (best.range[t] as number))) {
        worth[t] = total;
        best.focal[t] = focal;
        best.light[t] = light;
        best.path[t] = p;
        best.sample[t] = i;
        best.range[t] = range;
        if (total > best.most) best.most = total;
        told = true;
      }
      if (isGoodAlready || total < worthwhileFrom) continue;
      if (isFlat(sky) || !this.#glares(view, j, t, focal)) {
        good[first + t] = 1;
        best.goodSample[first + t] = i;
        told = true;
      }
    }
    return told;
  }

  #glares(view: PathInView, j: number, t: number, focal: number): boolean {
    const { outlook, table, sunInSight } = this.#with;
    const { framing, reach } = outlook;
    const sun = table.suns[t] as MovingSun;
    return (
      glaresInto(cosPhaseAt(view, j, sun), focal, sun, framing, reach) && !(sunInSight?.isHidden(t) ?? false)
    );
  }
}

/** What `#to` holds: the unit vector to the eye, the flank's, and what range and elevation do to the haze. */
const toEyeEast = 0;
const toEyeNorth = 1;
const toEyeUp = 2;
const flankEast = 3;
const flankNorth = 4;
const flankUp = 5;
const itsHaze = 6;

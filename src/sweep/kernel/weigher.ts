import { acosDeg, DEG } from '../../figures/geometry/angles';
import { glaresInto } from '../../figures/glare-on-view';
import { isFlat, mistFactor } from '../../figures/light/sky';
import { hasFlankAt, sinUnderside } from '../../figures/light-on-view';
import { reachFactor } from '../../figures/optics/reach';
import type { Outlook } from '../../figures/outlook';
import { litFrom, worthwhileFrom } from '../../figures/practice';
import { aspectFactor, hazeOf, lightFactor } from '../../figures/score';
import type { LazySight } from '../lazy-sight';
import type { BestSoFar } from './best-so-far';
import { rowOf } from './dark-flanks';
import {
  atAltitude,
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

/** What rounding may add to a bound. */
export const slack = 1 + 1e-9;

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

  constructor(weighed: Weighed) {
    this.#with = weighed;
  }

  /** Sample `i` of path `p` at the first `count` of some instants; whether it was the best, or good, at any. */
  weigh(p: number, i: number, passing: Int32Array, count: number, least: number): boolean {
    const { outlook, table, best, needed, sight } = this.#with;
    const pieces = this.#with.pieces[p] as Pieces;
    const view = pieces.viewAt(i);
    const j = i % pieceSize;
    const focal = view.focalAt(j);
    if (focal !== focal) return false;
    const reached = reachFactor(outlook.reach, focal);
    if (reached * slack < least || reached === 0) return false;
    const cosAspect = view.cosAspectAt(j);
    const aspect = aspectFactor(cosAspect !== cosAspect ? null : acosDeg(cosAspect));
    const most = reached * aspect;
    if (most * slack < least) return false;
    const e = view.east[j] as number;
    const n = view.north[j] as number;
    const u = view.up[j] as number;
    const range = view.range[j] as number;
    const ground = Math.sqrt(e * e + n * n);
    // Towards the eye: level, or in 3-D where one looks at the underside.
    const fromBelow = u > sinUnderside * range;
    const out = fromBelow ? range : ground;
    const te = out > 0 ? -e / out : 0;
    const tn = out > 0 ? -n / out : 0;
    const tu = fromBelow ? -u / out : 0;
    const toEast = fromBelow ? atEast : atLevelEast;
    const toNorth = fromBelow ? atNorth : atLevelNorth;
    const { range: hazeRange, elevation: hazeElevation } = hazeOf(range, elevationOf(u, range));
    const haze = hazeRange * hazeElevation;
    let perShare = limitSteps / (most * slack);
    const hasFlank = hasFlankAt(view, j);
    const sign = hasFlank && view.leftwardsAt(j, e, n, u) < 0 ? 1 : -1;
    const flankE = hasFlank ? sign * view.leftwardsAt(j, 1, 0, 0) : 0;
    const flankN = hasFlank ? sign * view.leftwardsAt(j, 0, 1, 0) : 0;
    const flankU = hasFlank ? sign * view.leftwardsAt(j, 0, 0, 1) : 0;
    const { at, limits, suns } = table;
    const { shares, thrifty } = needed;
    const { worth, good } = best;
    const tables = table.tables[p] as Int32Array;
    const b = (i / pieceSize) | 0;
    const row = rowOf(b, pieces.side[b] as number, table.count);
    const first = p * table.count;
    let seen = -1;
    let told = false;
    for (let k = 0; k < count; k++) {
      const t = passing[k] as number;
      const o = t * atEach;
      const clear = 1 - haze * (at[o + atHaze] as number);
      const step = ((shares[first + t] as number) * perShare) / clear;
      if (step > limitSteps) continue;
      const cos =
        out === 0
          ? 1
          : te * (at[o + toEast] as number) +
            tn * (at[o + toNorth] as number) +
            tu * (at[o + atUp] as number);
      if (cos < (limits[(tables[row + t] as number) + (step | 0)] as number)) continue;
      const { sky } = suns[t] as MovingSun;
      const hazed = clear * mistFactor(range, sky);
      const toSun =
        flankE * (at[o + atEast] as number) +
        flankN * (at[o + atNorth] as number) +
        flankU * (at[o + atUp] as number);
      const light = lightFactor(
        at[o + atAltitude] as number,
        acosDeg(cos),
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
      if (isFlat(sky) || !this.#glares(t, e, n, u, range, focal)) {
        good[first + t] = 1;
        best.goodSample[first + t] = i;
        told = true;
      }
    }
    return told;
  }

  #glares(t: number, e: number, n: number, u: number, range: number, focal: number): boolean {
    const { outlook, table, sunInSight } = this.#with;
    const { at } = table;
    const o = t * atEach;
    const cosPhase =
      -(e * (at[o + atEast] as number) + n * (at[o + atNorth] as number) + u * (at[o + atUp] as number)) /
      range;
    const sun = table.suns[t] as MovingSun;
    return (
      glaresInto(cosPhase, focal, sun, outlook.framing, outlook.reach) && !(sunInSight?.isHidden(t) ?? false)
    );
  }
}

/** As `elevationAt` has it, degrees. */
const elevationOf = (up: number, range: number): number =>
  Math.asin(Math.max(-1, Math.min(1, up / range))) * DEG;

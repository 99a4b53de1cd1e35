import { acosDeg, DEG, RAD } from '../figures/geometry/angles';
import { along, dot, frameAt, mapped } from '../figures/geometry/earth';
import { glaresInto } from '../figures/glare-on-view';
import { isFlat, mistFactor } from '../figures/light/sky';
import { hasFlankAt, sinUnderside } from '../figures/light-on-view';
import { farReach, reachFactor } from '../figures/optics/reach';
import type { Outlook } from '../figures/outlook';
import { litFrom, worthwhileFrom } from '../figures/practice';
import { aspectFactor, hazeByAltitude, hazeOf, lightCeiling, lightFactor } from '../figures/score';
import { seasons, type Season } from '../figures/sight/spot-sight';
import type { Path } from '../figures/traffic/paths';
import type { Position } from '../survey/document';
import { darkFlanks, rowOf } from './dark-flanks';
import { LazySight } from './lazy-sight';
import { lightLimits, limitSteps } from './light-limits';
import { PieceQueue } from './piece-queue';
import { pieceSize, Pieces } from './pieces';
import { SunOver, type MovingSun } from './sun-over';

/** What is asked at every place. */
export interface KernelQuestion {
  readonly paths: readonly Path[];
  readonly outlook: Outlook;
  /** ms since 1970, UTC. */
  readonly instants: readonly number[];
  /** The middle of the neighbourhood. */
  readonly middle: Position;
  /**
   * Whether `worth` is wanted at every instant, come what may. Else, where no path is ever good, it is only that of the best
   * instant, and at the others no more than a bound from below: most places are such.
   */
  readonly everyInstant: boolean;
}

/** What rounding may add to a bound. */
const slack = 1 + 1e-9;
/** Limits of one instant in `#limits`. */
const limitsEach = limitSteps + 1;

/**
 * The figures of one place after another: for every instant the total of the best sample over all paths (`worth`), and for
 * every path and instant whether some sample without glare is worth waiting for (`good`). The same as `spotFigures`
 * gives for a standing spot there (test S120), by the same functions, but what cannot beat the best so far is passed
 * over: what was best at the place before is asked first, then the others are bounded by range, by the cosine of the light
 * angle, by reach and aspect. What is in sight is asked of the few samples that are left. Plain on purpose, nothing is
 * allocated in the loops over samples and instants; the answers hold until the next place.
 */
export class Kernel {
  /** Total of the best sample, one an instant. */
  readonly worth: Float64Array;
  /** Its needed focal length in mm, its factor of light, its path and its place on it. */
  readonly focal: Float64Array;
  readonly light: Float64Array;
  readonly bestPath: Int16Array;
  readonly bestSample: Int32Array;
  readonly #range: Float64Array;
  /** What was best at the place before. */
  readonly #formerPath: Int16Array;
  readonly #formerSample: Int32Array;
  /** 1 where a path is good at an instant: paths x instants. */
  readonly good: Uint8Array;
  /** By which sample; at the place before, until it is known here. */
  readonly #goodSample: Int32Array;

  readonly #question: KernelQuestion;
  readonly #pieces: readonly Pieces[];
  readonly #queue: PieceQueue;
  /** What share of its ceiling a sample must reach to matter (`#leastShare`): paths x instants, and the least of each path. */
  readonly #shares: Float64Array;
  readonly #least: Float64Array;
  /** Which of what was found each path's shares are up to date with, and how much was found. */
  readonly #upTo: Int32Array;
  #found = 0;
  /** Whether at the moment only what is good, or best of all instants, matters. */
  #thrifty = false;
  /** The best of all instants so far. */
  #most = 0;
  readonly #suns: SunOver;
  readonly #sight: LazySight | null;
  readonly #seasons: readonly Season[];
  /** Two tables an instant (`lightLimits`): with the flank dark from `count x limitsEach` on. */
  readonly #limits: Float64Array;
  /** Where the table of each instant begins: pieces x sides x instants, path by path. */
  readonly #tables: readonly Int32Array[];
  /** Nine numbers an instant, so that the innermost loop touches one stretch of memory: see `at*`. */
  readonly #at: Float64Array;
  /** Instants at which the piece under work may matter. */
  readonly #passing: Int32Array;
  /** Whether the sun is behind something: 0 not asked, 1 in sight, 2 hidden. */
  readonly #sunHidden: Uint8Array;

  constructor(question: KernelQuestion) {
    const { paths, outlook, instants, middle } = question;
    const count = instants.length;
    this.#question = question;
    this.worth = new Float64Array(count);
    this.focal = new Float64Array(count);
    this.light = new Float64Array(count);
    this.bestPath = new Int16Array(count).fill(-1);
    this.bestSample = new Int32Array(count);
    this.good = new Uint8Array(count * paths.length);
    this.#goodSample = new Int32Array(count * paths.length).fill(-1);
    this.#range = new Float64Array(count);
    this.#formerPath = new Int16Array(count);
    this.#formerSample = new Int32Array(count);
    this.#at = new Float64Array(count * atEach);
    this.#passing = new Int32Array(count);
    this.#sunHidden = new Uint8Array(count);
    this.#pieces = paths.map(({ samples }) => new Pieces(samples, outlook.framing));
    this.#queue = new PieceQueue(this.#pieces.map((pieces) => pieces.count));
    this.#shares = new Float64Array(count * paths.length);
    this.#least = new Float64Array(paths.length);
    this.#upTo = new Int32Array(paths.length).fill(-1);
    this.#suns = new SunOver(middle, instants, instants.map(outlook.skyAt));
    this.#suns.at(frameAt(middle));
    this.#limits = new Float64Array(2 * count * limitsEach);
    this.#suns.suns.forEach(({ sun, sky }, t) => {
      this.#limits.set(lightLimits(sun.geometricAltitude, sky), t * limitsEach);
      this.#limits.set(lightLimits(sun.geometricAltitude, sky, false), (count + t) * limitsEach);
    });
    this.#tables = paths.map(({ samples }) =>
      Int32Array.from(
        darkFlanks(samples, this.#suns),
        (dark, k) => (dark * count + (k % count)) * limitsEach,
      ),
    );
    const { around, timeZone, framing } = outlook;
    this.#sight = around && new LazySight(around, paths, framing);
    this.#seasons = around
      ? seasons(around, timeZone, instants)
      : [{ does: new Uint8Array(0), instants: instants.map((_, i) => i) }];
  }

  /** An eye at a position, `elevation` m above mean sea level. */
  at(position: Position, elevation: number): void {
    const { outlook, everyInstant } = this.#question;
    const { around } = outlook;
    const frame = frameAt(position);
    const eye = { frame, point: along(frame.origin, frame.up, elevation) };
    this.#suns.at(frame);
    this.#setSuns();
    // Kept apart: the first sample that is asked is the best so far at every instant.
    this.#formerPath.set(this.bestPath);
    this.#formerSample.set(this.bestSample);
    this.worth.fill(0);
    this.focal.fill(NaN);
    this.light.fill(0);
    for (let k = 0; k < this.good.length; k++) if (this.good[k] === 0) this.#goodSample[k] = -1;
    this.good.fill(0);
    this.#range.fill(Infinity);
    this.#most = 0;
    this.#sunHidden.fill(0);
    for (const pieces of this.#pieces) pieces.look(eye);
    this.#rank();
    for (const season of this.#seasons) {
      const instants = season.instants.filter((t) => (this.#at[t * atEach + atCeiling] as number) > 0);
      if (instants.length === 0) continue;
      if (this.#sight && around) {
        const [x, y] = mapped(around.frame, position);
        this.#sight.stand(season.does, x, y, elevation);
      }
      this.#neighbours(instants);
      // Leaves that fall in the midst of the hours are rare enough.
      this.#thrifty = !everyInstant && this.#seasons.length === 1 && !this.good.includes(1);
      this.#throughout(instants);
      if (!this.#thrifty || !this.good.includes(1)) continue;
      this.#thrifty = false;
      this.#throughout(instants);
    }
    for (let t = 0; t < this.worth.length; t++) if (this.worth[t] === 0) this.bestPath[t] = -1;
  }

  #setSuns(): void {
    const { suns } = this.#suns;
    const at = this.#at;
    for (let t = 0, k = 0; t < suns.length; t++, k += atEach) {
      const { sun, east, north, up, levelEast, levelNorth, sky } = suns[t] as MovingSun;
      at[k + atEast] = east;
      at[k + atNorth] = north;
      at[k + atUp] = up;
      at[k + atLevelEast] = levelEast;
      at[k + atLevelNorth] = levelNorth;
      at[k + atAltitude] = sun.geometricAltitude;
      at[k + atCeiling] = lightCeiling(sun.geometricAltitude, sky);
      at[k + atHaze] = hazeByAltitude(sun.geometricAltitude, sky);
    }
  }

  /**
   * What was best or good at the place before is likely to be so here: from then on the bounds bite. Each is asked at its own
   * instants only; at the others it takes its turn with the rest.
   */
  #neighbours(instants: readonly number[]): void {
    const { paths } = this.#question;
    const all = this.worth.length;
    this.#shares.fill(0);
    this.#found++;
    for (let k = 0; k < instants.length; k++) {
      const t = instants[k] as number;
      const p = this.#formerPath[t] as number;
      const i = this.#formerSample[t] as number;
      if (p < 0 || this.#isBefore(instants, k, p, i)) continue;
      let count = 0;
      for (let l = k; l < instants.length; l++) {
        const u = instants[l] as number;
        if (this.#formerPath[u] === p && this.#formerSample[u] === i) this.#passing[count++] = u;
      }
      this.#sample(p, i, count, 0);
    }
    for (let p = 0; p < paths.length; p++) {
      this.#leastShare(p, instants);
      for (let k = 0; k < instants.length; k++) {
        const t = instants[k] as number;
        const i = this.#goodSample[p * all + t] as number;
        if (i < 0 || this.good[p * all + t] === 1) continue;
        this.#passing[0] = t;
        this.#sample(p, i, 1, 0);
      }
    }
  }

  /** Whether a sample was the best at an instant before the `k`th. */
  #isBefore(instants: readonly number[], k: number, p: number, i: number): boolean {
    for (let l = 0; l < k; l++) {
      const u = instants[l] as number;
      if (this.#formerPath[u] === p && this.#formerSample[u] === i) return true;
    }
    return false;
  }

  /** None of a piece is nearer than that, and none is seen from farther aside. */
  #rank(): void {
    const { reach } = this.#question.outlook;
    const { count, path, piece, most } = this.#queue;
    for (let q = 0; q < count; q++) {
      const { focal, aspect } = this.#pieces[path[q] as number] as Pieces;
      const b = piece[q] as number;
      most[q] = farReach(reach, focal[b] as number) * (aspect[b] as number) * slack;
    }
    this.#queue.sort();
  }

  /** Every piece of every path, those first that promise most: so what is best is known early, and few others are asked. */
  #throughout(instants: readonly number[]): void {
    const queue = this.#queue;
    this.#found++;
    for (let q = 0; q < queue.count; q++) {
      const p = queue.path[q] as number;
      const b = queue.piece[q] as number;
      const pieces = this.#pieces[p] as Pieces;
      const far = queue.most[q] as number;
      if (far < this.#leastShare(p, instants)) continue;
      const passing = this.#passes(p, b, far, instants);
      if (passing === 0) continue;
      const to = Math.min(pieces.samples, (b + 1) * pieceSize);
      for (let i = b * pieceSize; i < to; i++)
        if (this.#sample(p, i, passing, this.#leastShare(p, instants))) this.#found++;
    }
  }

  /** The instants at which a piece of a path may matter, by its range and by how the sun stands to it: how many. */
  #passes(p: number, b: number, far: number, instants: readonly number[]): number {
    const pieces = this.#pieces[p] as Pieces;
    const tables = this.#tables[p] as Int32Array;
    const row = rowOf(b, pieces.side[b] as number, this.worth.length);
    const at = this.#at;
    const limits = this.#limits;
    const perShare = limitSteps / far;
    const shares = this.#shares;
    const first = p * this.worth.length;
    const east = pieces.east[b] as number;
    const north = pieces.north[b] as number;
    const aside = pieces.aside[b] as number;
    const haze = pieces.haze[b] as number;
    let count = 0;
    for (let k = 0; k < instants.length; k++) {
      const t = instants[k] as number;
      const o = t * atEach;
      const step = ((shares[first + t] as number) * perShare) / (1 - haze * (at[o + atHaze] as number));
      if (step > limitSteps) continue;
      const cos = east * (at[o + atLevelEast] as number) + north * (at[o + atLevelNorth] as number) + aside;
      if (cos < (limits[(tables[row + t] as number) + (step | 0)] as number)) continue;
      this.#passing[count++] = t;
    }
    return count;
  }

  /**
   * What share of its ceiling a sample of a path must reach to matter, instant by instant: to be better than the best so
   * far, or worth waiting for where the path is not yet. The least of them.
   */
  #leastShare(p: number, instants: readonly number[]): number {
    if (this.#upTo[p] === this.#found) return this.#least[p] as number;
    const at = this.#at;
    const shares = this.#shares;
    const first = p * this.worth.length;
    let least = Infinity;
    for (let k = 0; k < instants.length; k++) {
      const t = instants[k] as number;
      const best = this.#thrifty ? this.#most : (this.worth[t] as number);
      const needed = best < worthwhileFrom || this.good[first + t] === 1 ? best : worthwhileFrom;
      const share = needed / (at[t * atEach + atCeiling] as number);
      shares[first + t] = share;
      if (share < least) least = share;
    }
    this.#upTo[p] = this.#found;
    this.#least[p] = least;
    return least;
  }

  /** Sample `i` of path `p` at the first `count` passing instants; whether it was the best, or good, at any. */
  #sample(p: number, i: number, count: number, least: number): boolean {
    const pieces = this.#pieces[p] as Pieces;
    const view = pieces.viewAt(i);
    const j = i % pieceSize;
    const { reach } = this.#question.outlook;
    const focal = view.focalAt(j);
    if (focal !== focal) return false;
    const reached = reachFactor(reach, focal);
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
    const shares = this.#shares;
    const hasFlank = hasFlankAt(view, j);
    const sign = hasFlank && view.leftwardsAt(j, e, n, u) < 0 ? 1 : -1;
    const flankE = hasFlank ? sign * view.leftwardsAt(j, 1, 0, 0) : 0;
    const flankN = hasFlank ? sign * view.leftwardsAt(j, 0, 1, 0) : 0;
    const flankU = hasFlank ? sign * view.leftwardsAt(j, 0, 0, 1) : 0;
    const at = this.#at;
    const limits = this.#limits;
    const tables = this.#tables[p] as Int32Array;
    const row = rowOf((i / pieceSize) | 0, pieces.side[(i / pieceSize) | 0] as number, this.worth.length);
    const { suns } = this.#suns;
    const first = p * this.worth.length;
    let sight = -1;
    let told = false;
    for (let k = 0; k < count; k++) {
      const t = this.#passing[k] as number;
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
      const isGoodAlready = this.good[first + t] === 1;
      const before = this.worth[t] as number;
      if (open < (this.#thrifty ? this.#most : before) && (isGoodAlready || open < worthwhileFrom)) continue;
      if (sight < 0) {
        sight = this.#sight ? this.#sight.at(p, i) : 1;
        if (sight === 0) break;
        // From here on the half-hidden one must be the better for it.
        perShare /= sight;
      }
      // In the order of `scoreAt`, so that not even rounding differs.
      const total = light * reached * aspect * sight * hazed;
      if (total > before || (total === before && total > 0 && range < (this.#range[t] as number))) {
        this.worth[t] = total;
        this.focal[t] = focal;
        this.light[t] = light;
        this.bestPath[t] = p;
        this.bestSample[t] = i;
        this.#range[t] = range;
        if (total > this.#most) this.#most = total;
        told = true;
      }
      if (isGoodAlready || total < worthwhileFrom) continue;
      if (isFlat(sky) || !this.#glares(t, e, n, u, range, focal)) {
        this.#setGood(p, t, i);
        told = true;
      }
    }
    return told;
  }

  #glares(t: number, e: number, n: number, u: number, range: number, focal: number): boolean {
    const { framing, reach } = this.#question.outlook;
    const at = this.#at;
    const o = t * atEach;
    const cosPhase =
      -(e * (at[o + atEast] as number) + n * (at[o + atNorth] as number) + u * (at[o + atUp] as number)) /
      range;
    const sun = this.#suns.suns[t] as MovingSun;
    return glaresInto(cosPhase, focal, sun, framing, reach) && !this.#isSunHidden(t);
  }

  #setGood(p: number, t: number, i: number): void {
    const at = p * this.worth.length + t;
    this.good[at] = 1;
    this.#goodSample[at] = i;
  }

  #isSunHidden(t: number): boolean {
    const sight = this.#sight;
    const around = this.#question.outlook.around;
    if (!sight || !around) return false;
    if (this.#sunHidden[t] === 0) {
      const sun = this.#suns.suns[t] as MovingSun;
      const at = this.#suns.frame;
      const site = around.frame;
      const e = sun.levelEast * dot(at.east, site.east) + sun.levelNorth * dot(at.north, site.east);
      const n = sun.levelEast * dot(at.east, site.north) + sun.levelNorth * dot(at.north, site.north);
      const level = Math.sqrt(e * e + n * n) || 1;
      const hidden = sight.hidesSky(e / level, n / level, Math.tan(sun.sun.altitude * RAD));
      this.#sunHidden[t] = hidden ? 2 : 1;
    }
    return this.#sunHidden[t] === 2;
  }
}

/** What `#at` holds of each instant: the sun, its ceiling of light, and its part in the haze. */
const atEast = 0;
const atNorth = 1;
const atUp = 2;
const atLevelEast = 3;
const atLevelNorth = 4;
const atAltitude = 5;
const atCeiling = 6;
const atHaze = 7;
const atEach = 8;

/** As `elevationAt` has it, degrees. */
const elevationOf = (up: number, range: number): number =>
  Math.asin(Math.max(-1, Math.min(1, up / range))) * DEG;

import { along, frameAt, mapped } from '../../figures/geometry/earth';
import { farReach } from '../../figures/optics/reach';
import type { Outlook } from '../../figures/outlook';
import { slack } from '../../figures/score';
import { seasons, type Season } from '../../figures/sight/spot-sight';
import type { Path } from '../../figures/traffic/paths';
import type { Position } from '../../survey/document';
import { LazySight } from '../lazy-sight';
import { BestSoFar } from './best-so-far';
import { rowOf } from './dark-flanks';
import { atEach, atHaze, atLevelEast, atLevelNorth, InstantTable } from './instant-table';
import { limitSteps } from './light-limits';
import { NeededShares } from './needed-shares';
import { PieceQueue } from './piece-queue';
import { pieceSize, Pieces } from './pieces';
import { SunInSight } from './sun-in-sight';
import { Weigher } from './weigher';

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

/**
 * The figures of one place after another: for every instant the total of the best sample over all paths (`worth`), and for
 * every path and instant whether some sample without glare is worth waiting for (`good`). The same as `spotFigures`
 * gives for a standing spot there (test S120), by the same functions, but what cannot beat the best so far is passed
 * over: what was best at the place before is asked first, then the others are bounded by range, by the cosine of the light
 * angle, by reach and aspect. What is in sight is asked of the few samples that are left. Plain on purpose, nothing is
 * allocated in the loops over samples and instants; the answers hold until the next place.
 */
export class Kernel {
  readonly #question: KernelQuestion;
  readonly #pieces: readonly Pieces[];
  readonly #queue: PieceQueue;
  readonly #table: InstantTable;
  readonly #best: BestSoFar;
  readonly #needed: NeededShares;
  readonly #weigher: Weigher;
  readonly #sight: LazySight | null;
  readonly #sunInSight: SunInSight | null;
  readonly #seasons: readonly Season[];
  /** Instants at which the piece under work may matter. */
  readonly #passing: Int32Array;
  /** 1 for instants whose former best has been asked. */
  readonly #taken: Uint8Array;

  constructor(question: KernelQuestion) {
    const { paths, outlook, instants, middle } = question;
    const { around, timeZone, framing, skyAt } = outlook;
    this.#question = question;
    this.#pieces = paths.map(({ samples }) => new Pieces(samples, framing));
    this.#queue = new PieceQueue(this.#pieces.map((pieces) => pieces.count));
    this.#table = new InstantTable(middle, instants, skyAt, paths);
    this.#best = new BestSoFar(instants.length, paths.length);
    this.#needed = new NeededShares(paths.length, this.#best, this.#table);
    this.#sight = around && new LazySight(around, paths, framing);
    this.#sunInSight = around && this.#sight && new SunInSight(this.#table, this.#sight, around.frame);
    this.#weigher = new Weigher({
      outlook,
      pieces: this.#pieces,
      table: this.#table,
      best: this.#best,
      needed: this.#needed,
      sight: this.#sight,
      sunInSight: this.#sunInSight,
    });
    this.#passing = new Int32Array(instants.length);
    this.#taken = new Uint8Array(instants.length);
    this.#seasons = around
      ? seasons(around, timeZone, instants)
      : [{ does: new Uint8Array(0), instants: instants.map((_, i) => i) }];
  }

  /** Total of the best sample, one an instant. */
  get worth(): Float64Array {
    return this.#best.worth;
  }

  /** Its needed focal length in mm, its factor of light, its path (-1 for none) and its place on it. */
  get focal(): Float64Array {
    return this.#best.focal;
  }

  get light(): Float64Array {
    return this.#best.light;
  }

  get bestPath(): Int16Array {
    return this.#best.path;
  }

  get bestSample(): Int32Array {
    return this.#best.sample;
  }

  /** 1 where a path is good at an instant: paths x instants. */
  get good(): Uint8Array {
    return this.#best.good;
  }

  /** An eye at a position, `elevation` m above mean sea level. */
  at(position: Position, elevation: number): void {
    const { outlook, everyInstant } = this.#question;
    const { around } = outlook;
    const table = this.#table;
    const frame = frameAt(position);
    const eye = { frame, point: along(frame.origin, frame.up, elevation) };
    table.move(frame);
    this.#best.begin();
    this.#sunInSight?.begin();
    for (const pieces of this.#pieces) pieces.look(eye);
    this.#rank();
    for (const season of this.#seasons) {
      table.ask(season.instants);
      if (table.askedCount === 0) continue;
      if (this.#sight && around) {
        const [x, y] = mapped(around.frame, position);
        this.#sight.stand(season.does, x, y, elevation);
      }
      this.#neighbours();
      // Leaves that fall in the midst of the hours are rare enough.
      this.#needed.thrifty = !everyInstant && this.#seasons.length === 1 && !this.good.includes(1);
      this.#throughout();
      if (!this.#needed.thrifty || !this.good.includes(1)) continue;
      this.#needed.thrifty = false;
      this.#throughout();
    }
    this.#best.end();
  }

  /**
   * What was best or good at the place before is likely to be so here: from then on the bounds bite. Each is asked at its own
   * instants only; at the others it takes its turn with the rest.
   */
  #neighbours(): void {
    const { paths } = this.#question;
    const best = this.#best;
    const { count: all, asked, askedCount } = this.#table;
    const passing = this.#passing;
    const taken = this.#taken;
    this.#needed.begin();
    taken.fill(0);
    for (let k = 0; k < askedCount; k++) {
      const t = asked[k] as number;
      const p = best.formerPath[t] as number;
      const i = best.formerSample[t] as number;
      if (p < 0 || taken[t] === 1) continue;
      let count = 0;
      for (let l = k; l < askedCount; l++) {
        const u = asked[l] as number;
        if (best.formerPath[u] !== p || best.formerSample[u] !== i) continue;
        taken[u] = 1;
        passing[count++] = u;
      }
      this.#weigher.weigh(p, i, passing, count, 0);
    }
    for (let p = 0; p < paths.length; p++) {
      this.#needed.leastOf(p);
      for (let k = 0; k < askedCount; k++) {
        const t = asked[k] as number;
        const i = best.goodSample[p * all + t] as number;
        if (i < 0 || best.good[p * all + t] === 1) continue;
        passing[0] = t;
        this.#weigher.weigh(p, i, passing, 1, 0);
      }
    }
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
  #throughout(): void {
    const queue = this.#queue;
    const needed = this.#needed;
    needed.outdate();
    for (let q = 0; q < queue.count; q++) {
      const p = queue.path[q] as number;
      const b = queue.piece[q] as number;
      const pieces = this.#pieces[p] as Pieces;
      const far = queue.most[q] as number;
      if (far < needed.leastOf(p)) continue;
      const passing = this.#passes(p, b, far);
      if (passing === 0) continue;
      const to = Math.min(pieces.samples, (b + 1) * pieceSize);
      for (let i = b * pieceSize; i < to; i++)
        if (this.#weigher.weigh(p, i, this.#passing, passing, needed.leastOf(p))) needed.outdate();
    }
  }

  /** The instants at which a piece of a path may matter, by its range and by how the sun stands to it: how many. */
  #passes(p: number, b: number, far: number): number {
    const pieces = this.#pieces[p] as Pieces;
    const { at, limits, count: all, asked, askedCount } = this.#table;
    const tables = this.#table.tables[p] as Int32Array;
    const row = rowOf(b, pieces.side[b] as number, all);
    const perShare = limitSteps / far;
    const { shares, within } = this.#needed;
    const first = p * all;
    const east = pieces.east[b] as number;
    const north = pieces.north[b] as number;
    const aside = pieces.aside[b] as number;
    const haze = pieces.haze[b] as number;
    const nearest = pieces.nearest[b] as number;
    const passing = this.#passing;
    let count = 0;
    for (let k = 0; k < askedCount; k++) {
      const t = asked[k] as number;
      const o = t * atEach;
      if (nearest >= (within[first + t] as number)) continue;
      const step = ((shares[first + t] as number) * perShare) / (1 - haze * (at[o + atHaze] as number));
      if (step > limitSteps) continue;
      const cos = east * (at[o + atLevelEast] as number) + north * (at[o + atLevelNorth] as number) + aside;
      if (cos < (limits[(tables[row + t] as number) + (step | 0)] as number)) continue;
      passing[count++] = t;
    }
    return count;
  }
}

import { worthwhileFrom } from '../../figures/practice';
import type { BestSoFar } from './best-so-far';
import { atCeiling, atEach, atPerCeiling, type InstantTable } from './instant-table';

/**
 * What share of its ceiling a sample of a path must reach to matter, instant by instant: to be better than the best so
 * far, or worth waiting for where the path is not yet.
 */
export class NeededShares {
  /** Paths x instants. */
  readonly shares: Float64Array;
  /**
   * m from which on a sample does not matter whatever its score: where the best has all the light that there is, another can only
   * equal it, and of equals the nearer counts. Infinity where that is not so. Paths x instants.
   */
  readonly within: Float64Array;
  /** Whether only what is good, or best of all instants, matters. */
  thrifty = false;
  /** The least of each path, and which of what was found its shares are up to date with. */
  readonly #least: Float64Array;
  readonly #upTo: Int32Array;
  #found = 0;
  readonly #best: BestSoFar;
  readonly #table: InstantTable;

  constructor(paths: number, best: BestSoFar, table: InstantTable) {
    this.#best = best;
    this.#table = table;
    this.shares = new Float64Array(table.count * paths);
    this.within = new Float64Array(table.count * paths).fill(Infinity);
    this.#least = new Float64Array(paths);
    this.#upTo = new Int32Array(paths).fill(-1);
  }

  /** A new place: all matters. */
  begin(): void {
    this.shares.fill(0);
    this.within.fill(Infinity);
    this.#found++;
  }

  /** Something was found, or the question has changed: all shares are out of date. */
  outdate(): void {
    this.#found++;
  }

  /** The least share of a path over the instants that are asked about; its shares are up to date from then on. */
  leastOf(p: number): number {
    if (this.#upTo[p] === this.#found) return this.#least[p] as number;
    const { worth, good, range, most } = this.#best;
    const { at, count, asked, askedCount } = this.#table;
    const { shares, within } = this;
    const first = p * count;
    let leastShare = Infinity;
    for (let k = 0; k < askedCount; k++) {
      const t = asked[k] as number;
      const o = t * atEach;
      const ceiling = at[o + atCeiling] as number;
      const best = this.thrifty ? most : (worth[t] as number);
      const isGoodOrNever = good[first + t] === 1 || ceiling < worthwhileFrom;
      const least = isGoodOrNever || best < worthwhileFrom ? best : worthwhileFrom;
      const share = least * (at[o + atPerCeiling] as number);
      shares[first + t] = share;
      // Exact: no factor is above 1, so that not even rounding makes a total more than its ceiling.
      within[first + t] = isGoodOrNever && (worth[t] as number) >= ceiling ? (range[t] as number) : Infinity;
      if (share < leastShare) leastShare = share;
    }
    this.#upTo[p] = this.#found;
    this.#least[p] = leastShare;
    return leastShare;
  }
}

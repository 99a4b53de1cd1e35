import { worthwhileFrom } from '../../figures/practice';
import type { BestSoFar } from './best-so-far';
import { atCeiling, atEach, type InstantTable } from './instant-table';

/**
 * What share of its ceiling a sample of a path must reach to matter, instant by instant: to be better than the best so
 * far, or worth waiting for where the path is not yet.
 */
export class NeededShares {
  /** Paths x instants. */
  readonly shares: Float64Array;
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
    this.#least = new Float64Array(paths);
    this.#upTo = new Int32Array(paths).fill(-1);
  }

  /** Something was found, or the question has changed: all shares are out of date. */
  outdate(): void {
    this.#found++;
  }

  /** The least share of a path, over some instants; its shares are up to date from then on. */
  leastOf(p: number, instants: readonly number[]): number {
    if (this.#upTo[p] === this.#found) return this.#least[p] as number;
    const { worth, good, most } = this.#best;
    const { at, count } = this.#table;
    const shares = this.shares;
    const first = p * count;
    let least = Infinity;
    for (let k = 0; k < instants.length; k++) {
      const t = instants[k] as number;
      const best = this.thrifty ? most : (worth[t] as number);
      const needed = best < worthwhileFrom || good[first + t] === 1 ? best : worthwhileFrom;
      const share = needed / (at[t * atEach + atCeiling] as number);
      shares[first + t] = share;
      if (share < least) least = share;
    }
    this.#upTo[p] = this.#found;
    this.#least[p] = least;
    return least;
  }
}

/**
 * Whatever answers late carries a turn: opening, following, bringing in, fetching. A newer question makes the older
 * answer late, in whichever order the two arrive.
 */
export class Turns {
  #last = 0;

  /** Begins a turn. What it returns says whether nothing newer has begun since. */
  begin(): () => boolean {
    const turn = ++this.#last;
    return () => turn === this.#last;
  }
}

/** What the survey says after an edit, as far as the edits of a run change it. */
export interface Said {
  readonly name: string;
  /** Of the spot that is dragged, in degrees. */
  readonly lng: number;
}

interface Entry extends Said {
  /** ms since 1970 at which the page had taken the edit; null while that is not known. */
  at: number | null;
}

/** Longitudes of an edit that the map rounds: about half a pixel at the zoom of these runs. */
const sameLng = (a: number, b: number) => Math.abs(a - b) < 2e-5;

export interface Loss {
  readonly edits: number;
  /** Edits that the page had taken and that are not kept. */
  readonly lost: number;
  /** ms before the kill at which the oldest lost one was made; 0 for none. */
  readonly oldestLost: number;
  /** Lost although made more than a second before the kill. */
  readonly lostOld: number;
  /** Lost although the page had said that it was kept. */
  readonly lostKept: number;
}

/** The edits of one run, in their order. */
export class EditLog {
  readonly #entries: Entry[];
  #saidKept = 0;

  constructor(start: Said) {
    this.#entries = [{ ...start, at: 0 }];
  }

  get last(): Said {
    const entry = this.#entries.at(-1);
    if (!entry) throw new Error('expected the state that the run started from');
    return entry;
  }

  /** An edit: logged before the page is asked for it, since it may be kept although nobody hears of it. */
  async make(change: Partial<Said>, run: () => Promise<void>): Promise<void> {
    const entry: Entry = { ...this.last, ...change, at: null };
    this.#entries.push(entry);
    await run();
    entry.at = Date.now();
  }

  /** The page has said that everything so far is kept. */
  keptSoFar(): void {
    this.#saidKept = this.#entries.length - 1;
  }

  /** Compares with what was kept when the browser was killed (ms since 1970). Throws for a state that never was. */
  lossOf(kept: Said, killedAt: number): Loss {
    const last = this.#entries.findLastIndex((e) => e.name === kept.name && sameLng(e.lng, kept.lng));
    if (last < 0)
      throw new Error(
        `expected a state that the survey had, got ${JSON.stringify(kept)} after ${JSON.stringify(this.#entries.slice(-3))}`,
      );
    const ages = this.#entries.slice(last + 1).flatMap(({ at }) => (at === null ? [] : [killedAt - at]));
    return {
      edits: this.#entries.length - 1,
      lost: ages.length,
      oldestLost: Math.max(0, ...ages),
      lostOld: ages.filter((age) => age > 1_000).length,
      lostKept: Math.max(0, this.#saidKept - last),
    };
  }
}

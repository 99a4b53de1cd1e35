import type { Database } from './database';
import { attempt } from './outcome';
import type { KeptNote, Outcome, SurveySummary } from './records';

/**
 * The list of kept surveys. Deleting marks a survey and leaves its text in place: that needs no room, so it works
 * when storage is full, and it can be undone after a reload too. The text goes when it is discarded.
 */
export class Shelf {
  readonly #database: Database;
  readonly #tell: (note: KeptNote) => void;

  constructor(database: Database, tell: (note: KeptNote) => void) {
    this.#database = database;
    this.#tell = tell;
  }

  /** All surveys, deleted ones too, changed last first. */
  list(): Promise<Outcome<readonly SurveySummary[]>> {
    return attempt(() =>
      this.#database.reading(async (transaction) =>
        (await transaction.objectStore('summaries').index('changed').getAll()).reverse(),
      ),
    );
  }

  /** Takes a survey out of the list; `now` in ms since 1970. */
  async remove(id: string, now: number): Promise<Outcome<void>> {
    const done = await this.#mark(id, now);
    if (done.ok) this.#tell({ id, revision: null });
    return done;
  }

  /** Puts a deleted survey back into the list. */
  async putBack(id: string): Promise<Outcome<void>> {
    const done = await this.#mark(id, null);
    if (done.ok) this.#tell({ id, revision: 0 });
    return done;
  }

  /** Forgets deleted surveys for good: those that were deleted before an instant (ms since 1970), or one of them. */
  async discard(which: { readonly deletedBefore: number } | { readonly id: string }): Promise<Outcome<void>> {
    const gone: string[] = [];
    const done = await attempt(() =>
      this.#database.writing(async (transaction) => {
        const summaries = transaction.objectStore('summaries');
        for (const { id, deleted } of await summaries.getAll()) {
          if (deleted === null) continue;
          if ('id' in which ? id !== which.id : deleted >= which.deletedBefore) continue;
          gone.push(id);
          await summaries.delete(id);
          await transaction.objectStore('surveys').delete(id);
        }
      }),
    );
    if (done.ok) for (const id of gone) this.#tell({ id, revision: null });
    return done;
  }

  #mark(id: string, deleted: number | null): Promise<Outcome<void>> {
    return attempt(() =>
      this.#database.writing(async (transaction) => {
        const summaries = transaction.objectStore('summaries');
        const summary = await summaries.get(id);
        if (summary) await summaries.put({ ...summary, deleted });
      }),
    );
  }
}

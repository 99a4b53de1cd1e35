import type { Database } from './database';
import { attempt } from './outcome';
import type { KeptNote, StoredSurvey, SurveyToKeep } from './records';

export type Written =
  | { readonly ok: true; readonly revision: number }
  /** Somebody else wrote a newer revision in between: another tab. */
  | { readonly ok: false; readonly why: 'conflict'; readonly theirs: StoredSurvey }
  /** The browser keeps nothing (private window, no room, storage refused). */
  | { readonly ok: false; readonly why: 'refused'; readonly reason: string };

/** Writes and reads single surveys. Knows text and revisions, nothing of what a survey is. */
export class Autosave {
  readonly #database: Database;
  readonly #tell: (note: KeptNote) => void;

  /** `tell` lets the other tabs know what has been written. */
  constructor(database: Database, tell: (note: KeptNote) => void) {
    this.#database = database;
    this.#tell = tell;
  }

  /**
   * Writes if the kept revision is still the one that this tab knows (0: none yet); compared in one transaction.
   * A survey that was deleted meanwhile is in the list again: somebody still works on it.
   */
  async write(survey: SurveyToKeep, knownRevision: number): Promise<Written> {
    const { facts, ...kept } = survey;
    const written = await attempt(() =>
      this.#database.writing<Exclude<Written, { why: 'refused' }>>(async (transaction) => {
        const [texts, summaries] = [transaction.objectStore('surveys'), transaction.objectStore('summaries')];
        const there = await summaries.get(survey.id);
        if (there && there.revision !== knownRevision) {
          const theirs = await texts.get(survey.id);
          if (theirs) return { ok: false, why: 'conflict', theirs };
        }
        const revision = Math.max(knownRevision, there?.revision ?? 0) + 1;
        const { text, ...rest } = kept;
        await texts.put({ ...kept, revision });
        await summaries.put({ ...rest, revision, size: text.length, facts, deleted: null });
        return { ok: true, revision };
      }),
    );
    if (!written.ok) return { ok: false, why: 'refused', reason: written.reason };
    if (written.value.ok) this.#tell({ id: survey.id, revision: written.value.revision });
    return written.value;
  }

  /** The survey under an id; null when there is none, it was deleted, or the browser refuses. */
  async read(id: string): Promise<StoredSurvey | null> {
    const read = await attempt(() =>
      this.#database.reading(async (transaction) => {
        const summary = await transaction.objectStore('summaries').get(id);
        if (!summary || summary.deleted !== null) return null;
        return (await transaction.objectStore('surveys').get(id)) ?? null;
      }),
    );
    return read.ok ? read.value : null;
  }

  /** The survey that was changed last, null when there is none or the browser refuses. */
  async latest(): Promise<StoredSurvey | null> {
    const read = await attempt(() =>
      this.#database.reading(async (transaction) => {
        const byChange = transaction.objectStore('summaries').index('changed');
        let cursor = await byChange.openCursor(null, 'prev');
        while (cursor && cursor.value.deleted !== null) cursor = await cursor.continue();
        return cursor ? ((await transaction.objectStore('surveys').get(cursor.value.id)) ?? null) : null;
      }),
    );
    return read.ok ? read.value : null;
  }
}

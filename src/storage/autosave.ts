import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** One survey as it is kept on this device. `changed`: ms since 1970; `revision` grows with every write. */
export interface StoredSurvey {
  readonly id: string;
  readonly name: string;
  readonly changed: number;
  readonly revision: number;
  readonly text: string;
}

interface Schema extends DBSchema {
  surveys: { key: string; value: StoredSurvey; indexes: { changed: number } };
}

export type Written =
  | { readonly ok: true; readonly revision: number }
  /** Somebody else wrote a newer revision in between: another tab. */
  | { readonly ok: false; readonly why: 'conflict'; readonly theirs: StoredSurvey }
  /** The browser keeps nothing (private window, no room, storage refused). */
  | { readonly ok: false; readonly why: 'refused'; readonly reason: string };

/** The surveys kept in the browser's IndexedDB. Knows text and revisions, nothing of what a survey is. */
export class Autosave {
  #database: Promise<IDBPDatabase<Schema>> | null = null;

  #open(): Promise<IDBPDatabase<Schema>> {
    this.#database ??= openDB<Schema>('sunside', 1, {
      upgrade(database) {
        database.createObjectStore('surveys', { keyPath: 'id' }).createIndex('changed', 'changed');
      },
    });
    // A refused opening must not be remembered: the next attempt may be allowed.
    this.#database.catch(() => (this.#database = null));
    return this.#database;
  }

  /** Writes if the kept revision is still the one that this tab knows (0: none yet); compared in one transaction. */
  async write(survey: Omit<StoredSurvey, 'revision'>, knownRevision: number): Promise<Written> {
    try {
      const transaction = (await this.#open()).transaction('surveys', 'readwrite');
      const kept = await transaction.store.get(survey.id);
      if (kept && kept.revision !== knownRevision) return { ok: false, why: 'conflict', theirs: kept };
      const revision = knownRevision + 1;
      await transaction.store.put({ ...survey, revision });
      await transaction.done;
      return { ok: true, revision };
    } catch (error) {
      return { ok: false, why: 'refused', reason: error instanceof Error ? error.message : String(error) };
    }
  }

  /** The survey under an id, null when there is none or the browser refuses. */
  async read(id: string): Promise<StoredSurvey | null> {
    try {
      return (await (await this.#open()).get('surveys', id)) ?? null;
    } catch {
      return null;
    }
  }

  /** The survey that was changed last, null when there is none or the browser refuses. */
  async latest(): Promise<StoredSurvey | null> {
    try {
      const cursor = await (
        await this.#open()
      )
        .transaction('surveys')
        .store.index('changed')
        .openCursor(null, 'prev');
      return cursor?.value ?? null;
    } catch {
      return null;
    }
  }
}

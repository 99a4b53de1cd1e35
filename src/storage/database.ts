import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import type { StoredSurvey, SurveySummary } from './records';

interface Schema extends DBSchema {
  surveys: { key: string; value: StoredSurvey };
  /** One for each survey, written in the same transaction: the list is read without the texts. */
  summaries: { key: string; value: SurveySummary; indexes: { changed: number } };
}

const stores = ['surveys', 'summaries'] as const;
export type Both<Mode extends IDBTransactionMode> = IDBPTransaction<Schema, typeof stores, Mode>;

/** The database has been raised once: version 1 had the texts alone. */
export const databaseVersion = 2;

type Upgrading = IDBPTransaction<Schema, ArrayLike<'surveys' | 'summaries'>, 'versionchange'>;

async function upgrade(database: IDBPDatabase<Schema>, from: number, transaction: Upgrading): Promise<void> {
  if (from < 1) database.createObjectStore('surveys', { keyPath: 'id' });
  if (from < 2) {
    const summaries = database.createObjectStore('summaries', { keyPath: 'id' });
    summaries.createIndex('changed', 'changed');
    const surveys = transaction.objectStore('surveys');
    for (let cursor = await surveys.openCursor(); cursor; cursor = await cursor.continue()) {
      const { text, ...rest } = cursor.value;
      await summaries.put({ ...rest, size: text.length, facts: null, deleted: null });
    }
  }
}

/** The browser's IndexedDB, opened when it is first needed and again when the browser has closed it. */
export class Database {
  readonly #name: string;
  #connection: Promise<IDBPDatabase<Schema>> | null = null;

  constructor(name = 'sunside') {
    this.#name = name;
  }

  async reading<T>(work: (transaction: Both<'readonly'>) => Promise<T>): Promise<T> {
    return work((await this.#connect()).transaction(stores, 'readonly'));
  }

  /**
   * All that is written is kept, or nothing of it. Durability is strict: what is said to be kept is on the disk,
   * also when the machine dies a moment later.
   */
  async writing<T>(work: (transaction: Both<'readwrite'>) => Promise<T>): Promise<T> {
    const transaction = (await this.#connect()).transaction(stores, 'readwrite', { durability: 'strict' });
    const done = transaction.done.then(
      () => null,
      (error: unknown) => ({ error }),
    );
    let value: T;
    try {
      value = await work(transaction);
    } catch (error) {
      // A refused request has ended the transaction already; anything else must not leave half a change behind.
      if (transaction.error === null) abort(transaction);
      await done;
      throw error;
    }
    const failed = await done;
    if (failed) throw failed.error;
    return value;
  }

  #connect(): Promise<IDBPDatabase<Schema>> {
    if (this.#connection) return this.#connection;
    const forget = () => {
      if (this.#connection === connection) this.#connection = null;
    };
    const connection = new Promise<IDBPDatabase<Schema>>((resolve, reject) => {
      openDB<Schema>(this.#name, databaseVersion, {
        upgrade: (database, from, _to, transaction) => void upgrade(database, from, transaction),
        // An older page holds the database. The next attempt finds it open, if the page is gone by then.
        blocked: () => reject(new Error('an older Sunside is open in another tab; close it')),
        // A newer page wants to raise the version: it must not wait for this one.
        blocking: (_current, _wanted, event) => {
          forget();
          (event.target as IDBDatabase).close();
        },
        terminated: forget,
      }).then(resolve, reject);
    });
    this.#connection = connection;
    // A refused opening must not be remembered: the next attempt may be allowed.
    connection.catch(forget);
    return connection;
  }
}

function abort(transaction: Both<'readwrite'>): void {
  try {
    transaction.abort();
  } catch {
    // It has ended by itself in between.
  }
}

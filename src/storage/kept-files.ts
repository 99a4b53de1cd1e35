import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { attempt } from './outcome';
import type { Outcome } from './records';

/** Apart from the surveys' database: nothing that happens to a large file can hold up or endanger a survey. */
const databaseName = 'sunside-files';
const store = 'files';

interface Schema extends DBSchema {
  files: { key: string; value: Blob };
}

/** Large files that are kept on this device as they are. The browser stores their bytes; only a handle is read. */
export class KeptFiles {
  readonly #name: string;

  constructor(name = databaseName) {
    this.#name = name;
  }

  keep(key: string, file: Blob): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#with((database) => database.put(store, file, key));
    });
  }

  /** Null when it is not there, or the browser does not hand it out. */
  async read(key: string): Promise<Blob | null> {
    const read = await attempt(() => this.#with((database) => database.get(store, key)));
    return read.ok && read.value instanceof Blob ? read.value : null;
  }

  /** The names of all files that are kept; none where the browser does not say. */
  async keys(): Promise<readonly string[]> {
    const read = await attempt(() => this.#with((database) => database.getAllKeys(store)));
    return read.ok ? read.value : [];
  }

  forget(key: string): Promise<Outcome<void>> {
    return attempt(() => this.#with((database) => database.delete(store, key)));
  }

  /** Opened for each request: a file is kept or read once in a long while. */
  async #with<T>(work: (database: IDBPDatabase<Schema>) => Promise<T>): Promise<T> {
    const database = await openDB<Schema>(this.#name, 1, {
      upgrade: (created) => void created.createObjectStore(store),
    });
    try {
      return await work(database);
    } finally {
      database.close();
    }
  }
}

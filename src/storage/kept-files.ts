import { attempt } from './outcome';
import type { Outcome } from './records';

/** Apart from the surveys' database: nothing that happens to a large file can hold up or endanger a survey. */
const databaseName = 'sunside-files';
const store = 'files';

/** Large files that are kept on this device as they are. The browser stores their bytes; only a handle is read. */
export class KeptFiles {
  readonly #name: string;

  constructor(name = databaseName) {
    this.#name = name;
  }

  keep(key: string, file: Blob): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#run('readwrite', (files) => files.put(file, key));
    });
  }

  /** Null when it is not there, or the browser does not hand it out. */
  async read(key: string): Promise<Blob | null> {
    const read = await attempt(() => this.#run('readonly', (files) => files.get(key) as IDBRequest<unknown>));
    return read.ok && read.value instanceof Blob ? read.value : null;
  }

  /** The names of all files that are kept; none where the browser does not say. */
  async keys(): Promise<readonly string[]> {
    const read = await attempt(() => this.#run('readonly', (files) => files.getAllKeys()));
    return read.ok ? read.value.map(String) : [];
  }

  forget(key: string): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#run('readwrite', (files) => files.delete(key));
    });
  }

  async #run<T>(mode: IDBTransactionMode, ask: (files: IDBObjectStore) => IDBRequest<T>): Promise<T> {
    const database = await this.#open();
    try {
      return await new Promise<T>((resolve, reject) => {
        const transaction = database.transaction(store, mode);
        const request = ask(transaction.objectStore(store));
        transaction.oncomplete = () => resolve(request.result);
        transaction.onabort = () => reject(transaction.error ?? new Error('the browser broke it off'));
      });
    } finally {
      database.close();
    }
  }

  #open(): Promise<IDBDatabase> {
    return new Promise((resolve, reject) => {
      const request = indexedDB.open(this.#name, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(store);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error ?? new Error('the browser opens no storage'));
    });
  }
}

import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { Autosave } from '../../src/storage/autosave';
import { Database, databaseVersion } from '../../src/storage/database';
import { Shelf } from '../../src/storage/shelf';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

const quiet = () => undefined;

/** The database as version 1 of it was made: the surveys alone, with an index by change. */
function makeVersionOne(
  records: readonly object[],
  whenOlderMustGo: (database: IDBDatabase) => void,
): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('sunside', 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('surveys', { keyPath: 'id' }).createIndex('changed', 'changed');
    };
    request.onerror = () => reject(new Error('expected version 1 to open'));
    request.onsuccess = () => {
      const database = request.result;
      database.onversionchange = () => whenOlderMustGo(database);
      const transaction = database.transaction('surveys', 'readwrite');
      for (const record of records) transaction.objectStore('surveys').put(record);
      transaction.oncomplete = () => resolve(database);
    };
  });
}

const old = [
  { id: 'a', name: 'Near field', changed: 1_700_000_000_000, revision: 7, text: '{"near":1}' },
  { id: 'b', name: 'Far field', changed: 1_700_000_500_000, revision: 2, text: '{"far":"two"}' },
];

describe('the database', () => {
  it('[K1] keeps every survey of version 1 when it is raised', async () => {
    expect(databaseVersion).toBe(2);
    (await makeVersionOne(old, quiet)).close();
    const database = new Database();
    const autosave = new Autosave(database, quiet);
    expect(await autosave.read('a')).toEqual(old[0]);
    expect(await autosave.read('b')).toEqual(old[1]);
    expect(await autosave.latest()).toEqual(old[1]);
    expect(await new Shelf(database, quiet).list()).toEqual({
      ok: true,
      value: [
        {
          id: 'b',
          name: 'Far field',
          changed: 1_700_000_500_000,
          revision: 2,
          size: 13,
          facts: null,
          deleted: null,
        },
        {
          id: 'a',
          name: 'Near field',
          changed: 1_700_000_000_000,
          revision: 7,
          size: 10,
          facts: null,
          deleted: null,
        },
      ],
    });
  });

  it('[K1] goes on with the revision of version 1', async () => {
    (await makeVersionOne(old, quiet)).close();
    const autosave = new Autosave(new Database(), quiet);
    const facts = { place: '', date: null, spots: 0 };
    const mine = { id: 'a', name: 'Near field', changed: 1_700_000_900_000, text: '{"near":3}', facts };
    expect(await autosave.write(mine, 6)).toMatchObject({ ok: false, why: 'conflict', theirs: old[0] });
    expect(await autosave.write(mine, 7)).toEqual({ ok: true, revision: 8 });
  });

  it('says that an older page holds it, and opens when that page is gone', async () => {
    const older = await makeVersionOne(old, quiet);
    const shelf = new Shelf(new Database(), quiet);
    expect(await shelf.list()).toEqual({
      ok: false,
      reason: 'an older Sunside is open in another tab; close it',
    });
    older.close();
    expect(await shelf.list()).toMatchObject({ ok: true, value: [{ id: 'b' }, { id: 'a' }] });
  });

  it('makes way for a newer page, and says afterwards why nothing is kept', async () => {
    const autosave = new Autosave(new Database(), quiet);
    const facts = { place: '', date: null, spots: 0 };
    const mine = { id: 'a', name: 'Field', changed: 5, text: '{}', facts };
    await autosave.write(mine, 0);
    await new Promise<void>((resolve, reject) => {
      const newer = indexedDB.open('sunside', databaseVersion + 1);
      newer.onsuccess = () => resolve();
      newer.onblocked = () => reject(new Error('expected the older page to make way'));
    });
    expect(await autosave.write(mine, 1)).toEqual({
      ok: false,
      why: 'refused',
      reason: 'a newer Sunside has been used here; reload the page',
    });
  });

  it('says when the browser has no storage at all', async () => {
    globalThis.indexedDB = {
      open: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    } as unknown as IDBFactory;
    const database = new Database();
    expect(await new Autosave(database, quiet).latest()).toBeNull();
    expect(await new Shelf(database, quiet).list()).toEqual({
      ok: false,
      reason: 'the browser allows this page no storage',
    });
  });
});

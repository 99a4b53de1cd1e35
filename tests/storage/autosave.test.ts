import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { Autosave } from '../../src/storage/autosave';
import { Database } from '../../src/storage/database';
import type { KeptNote } from '../../src/storage/records';
import { Shelf } from '../../src/storage/shelf';

let told: KeptNote[];
let autosave: Autosave;
let shelf: Shelf;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  told = [];
  const database = new Database();
  autosave = new Autosave(database, (note) => told.push(note));
  shelf = new Shelf(database, (note) => told.push(note));
});

const survey = (id: string, changed: number, text = `{"text of":"${id}"}`) => ({
  id,
  name: `Survey ${id}`,
  changed,
  text,
  facts: { place: 'ZZ01', date: '2026-06-21', spots: 3 },
});

const listed = async () => {
  const list = await shelf.list();
  if (!list.ok) throw new Error(list.reason);
  return list.value;
};

describe('writing a survey', () => {
  it('raises the revision with every write, and tells the other tabs', async () => {
    expect(await autosave.write(survey('m', 10), 0)).toEqual({ ok: true, revision: 1 });
    expect(await autosave.write(survey('m', 20, '{"newer":true}'), 1)).toEqual({ ok: true, revision: 2 });
    expect(await autosave.read('m')).toEqual({
      id: 'm',
      name: 'Survey m',
      changed: 20,
      revision: 2,
      text: '{"newer":true}',
    });
    expect(told).toEqual([
      { id: 'm', revision: 1 },
      { id: 'm', revision: 2 },
    ]);
  });

  it('[K2] does not overwrite what another tab has written, and hands it over', async () => {
    await autosave.write(survey('m', 10, '{"mine":1}'), 0);
    await autosave.write(survey('m', 20, '{"theirs":2}'), 1);
    expect(await autosave.write(survey('m', 30, '{"mine":3}'), 1)).toEqual({
      ok: false,
      why: 'conflict',
      theirs: { id: 'm', name: 'Survey m', changed: 20, revision: 2, text: '{"theirs":2}' },
    });
    expect((await autosave.read('m'))?.text).toBe('{"theirs":2}');
    expect((await listed())[0]).toMatchObject({ changed: 20, revision: 2, size: 12 });
    expect(told).toHaveLength(2);
  });

  it('[K2] lets one of two writes at the same time win', async () => {
    await autosave.write(survey('m', 10), 0);
    const both = await Promise.all([
      autosave.write(survey('m', 20, '{"first":1}'), 1),
      autosave.write(survey('m', 21, '{"second":1}'), 1),
    ]);
    expect(both[0]).toEqual({ ok: true, revision: 2 });
    expect(both[1]).toMatchObject({ why: 'conflict', theirs: { text: '{"first":1}' } });
  });

  it('puts a survey that was deleted meanwhile back into the list', async () => {
    await autosave.write(survey('m', 10), 0);
    await shelf.remove('m', 15);
    expect(await autosave.write(survey('m', 20, '{"still":"at it"}'), 1)).toEqual({ ok: true, revision: 2 });
    expect(await listed()).toMatchObject([{ id: 'm', deleted: null, revision: 2 }]);
  });

  it('goes on with a survey that was discarded meanwhile', async () => {
    await autosave.write(survey('m', 10), 0);
    await autosave.write(survey('m', 11), 1);
    await shelf.remove('m', 15);
    await shelf.discard({ id: 'm' });
    expect(await autosave.write(survey('m', 20), 2)).toEqual({ ok: true, revision: 3 });
  });

  it('keeps text and list together when a write fails half way', async () => {
    await autosave.write(survey('m', 10), 0);
    const unclonable = { ...survey('m', 20), facts: (() => 1) as never };
    expect(await autosave.write(unclonable, 1)).toMatchObject({ ok: false, why: 'refused' });
    expect(await autosave.read('m')).toMatchObject({ changed: 10, revision: 1 });
    expect(await listed()).toMatchObject([{ changed: 10, revision: 1 }]);
    expect(told).toHaveLength(1);
  });
});

describe('the list', () => {
  it('has the survey changed last first, without its text', async () => {
    await autosave.write(survey('older', 100), 0);
    await autosave.write(survey('newest', 300, '{"a":"bcd"}'), 0);
    await autosave.write(survey('between', 200), 0);
    const list = await listed();
    expect(list.map((s) => s.id)).toEqual(['newest', 'between', 'older']);
    expect(list[0]).toEqual({
      id: 'newest',
      name: 'Survey newest',
      changed: 300,
      revision: 1,
      size: 11,
      facts: { place: 'ZZ01', date: '2026-06-21', spots: 3 },
      deleted: null,
    });
  });

  it('hides what is deleted from opening, and gives it back whole', async () => {
    await autosave.write(survey('stays', 100), 0);
    await autosave.write(survey('goes', 300, '{"keep":"me"}'), 0);
    await shelf.remove('goes', 400);
    expect(await autosave.read('goes')).toBeNull();
    expect((await autosave.latest())?.id).toBe('stays');
    expect((await listed()).map((s) => [s.id, s.deleted])).toEqual([
      ['goes', 400],
      ['stays', null],
    ]);
    await shelf.putBack('goes');
    expect((await autosave.latest())?.text).toBe('{"keep":"me"}');
    expect(told.slice(2)).toEqual([
      { id: 'goes', revision: null },
      { id: 'goes', revision: 0 },
    ]);
  });

  it('discards only what was deleted, and long enough ago', async () => {
    for (const [id, changed] of [
      ['here', 1],
      ['long ago', 2],
      ['lately', 3],
    ] as const)
      await autosave.write(survey(id, changed), 0);
    await shelf.remove('long ago', 50);
    await shelf.remove('lately', 70);
    await shelf.discard({ deletedBefore: 70 });
    expect((await listed()).map((s) => s.id)).toEqual(['lately', 'here']);
    await shelf.discard({ id: 'here' });
    expect((await listed()).map((s) => s.id)).toEqual(['lately', 'here']);
    await shelf.putBack('long ago');
    expect(await autosave.read('long ago')).toBeNull();
  });
});

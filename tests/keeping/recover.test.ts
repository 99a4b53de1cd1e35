import { beforeEach, describe, expect, it, vi } from 'vitest';
import { recoverLastWords } from '../../src/keeping/recover';
import type { Written } from '../../src/storage/autosave';
import type { StoredSurvey, SurveyToKeep } from '../../src/storage/records';

/** Entries are properties of the storage itself, as in a browser. */
class FakeStorage {
  [key: string]: unknown;
}
Object.defineProperties(FakeStorage.prototype, {
  getItem: { value: (key: string) => storage[key] ?? null },
  removeItem: { value: (key: string) => delete storage[key] },
});
let storage: FakeStorage;

/** A store as `Autosave` is one, in memory. */
class FakeStore {
  readonly kept = new Map<string, StoredSurvey>();
  refuses = false;

  read(id: string): Promise<StoredSurvey | null> {
    return Promise.resolve(this.kept.get(id) ?? null);
  }
  write({ facts: _facts, ...survey }: SurveyToKeep, known: number): Promise<Written> {
    const theirs = this.kept.get(survey.id);
    if (this.refuses) return Promise.resolve({ ok: false, why: 'refused', reason: 'full' });
    if (theirs && theirs.revision !== known) return Promise.resolve({ ok: false, why: 'conflict', theirs });
    this.kept.set(survey.id, { ...survey, revision: known + 1 });
    return Promise.resolve({ ok: true, revision: known + 1 });
  }
}

let store: FakeStore;
const recover = () => recoverLastWords(store, () => 'new');

const textOf = (name: string) =>
  JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1, site: { name } }, features: [] });

const stored = (revision: number, name: string): StoredSurvey => ({
  id: 'field',
  name,
  changed: 40,
  revision,
  text: textOf(name),
});

function leave(page: string, known: number, name: string): void {
  const survey = {
    id: 'field',
    name,
    changed: 50,
    text: textOf(name),
    facts: { place: '', date: null, spots: 1 },
  };
  storage[`sunside-last-words-${page}`] = JSON.stringify({ survey, known });
}

beforeEach(() => {
  storage = new FakeStorage();
  store = new FakeStore();
  vi.stubGlobal('localStorage', storage);
});

describe('[K5] what a page left when it went', () => {
  it('takes its place as the next revision', async () => {
    store.kept.set('field', stored(3, 'Before'));
    leave('page', 3, 'After');
    expect(await recover()).toEqual([]);
    expect(store.kept.get('field')).toMatchObject({ revision: 4, name: 'After', text: textOf('After') });
    expect(Object.keys(storage)).toEqual([]);
  });

  it('is kept for the first time when nothing was written yet', async () => {
    leave('page', 0, 'Brand new');
    await recover();
    expect(store.kept.get('field')).toMatchObject({ revision: 1, name: 'Brand new' });
  });

  it('is forgotten when it was written after all', async () => {
    store.kept.set('field', stored(4, 'After'));
    leave('page', 3, 'After');
    expect(await recover()).toEqual([]);
    expect([...store.kept.values()]).toEqual([stored(4, 'After')]);
    expect(Object.keys(storage)).toEqual([]);
  });

  it('becomes a copy beside what another tab has written since', async () => {
    store.kept.set('field', stored(5, 'Theirs'));
    leave('page', 3, 'Mine');
    expect(await recover()).toEqual(['Mine (copy)']);
    expect(store.kept.get('field')).toEqual(stored(5, 'Theirs'));
    const copy = store.kept.get('new');
    expect(copy).toMatchObject({ revision: 1, name: 'Mine (copy)' });
    expect(JSON.parse(copy?.text ?? '')).toMatchObject({ sunside: { site: { name: 'Mine (copy)' } } });
    expect(Object.keys(storage)).toEqual([]);
  });

  it('waits for better times when the browser refuses', async () => {
    store.refuses = true;
    leave('page', 3, 'Mine');
    expect(await recover()).toEqual([]);
    store.refuses = false;
    await recover();
    expect(store.kept.get('field')?.name).toBe('Mine');
  });

  it('may come from several pages, and lie beside what is none', async () => {
    store.kept.set('field', stored(3, 'Before'));
    leave('first', 3, 'First');
    leave('second', 4, 'Second');
    storage['sunside-last-words-broken'] = '{"survey":{"id":7}}';
    storage['something-else'] = 'stays';
    await recover();
    expect(store.kept.get('field')).toMatchObject({ revision: 5, name: 'Second' });
    expect(storage['something-else']).toBe('stays');
  });

  it('is nothing where there is no such storage', async () => {
    vi.stubGlobal('localStorage', undefined);
    expect(await recover()).toEqual([]);
  });
});

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { OpenSurvey } from '../../src/keeping/open-survey';
import { SurveyDocument } from '../../src/state/document.svelte';
import { Saving } from '../../src/state/saving.svelte';
import { View } from '../../src/state/view.svelte';
import type { Written } from '../../src/storage/autosave';
import type { StoredSurvey, SurveyToKeep } from '../../src/storage/records';
import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { setSite } from '../../src/survey/edits/set-members';
import { newSurvey } from '../../src/survey/new-survey';
import { savingSurvey } from '../../src/survey/save';
import { openSurvey } from '../../src/survey/open';
import { later, settle, type Later } from '../support/later';

const saveFile = vi.hoisted(() => vi.fn());
vi.mock('../../src/storage/files', () => ({ saveFile, pickFile: vi.fn() }));

const spot = (id: string, lng: number) => ({
  type: 'Feature',
  id,
  properties: { kind: 'standing-spot' },
  geometry: { type: 'Point', coordinates: [lng, 47.5] },
});
const textOf = (name: string, features: unknown[] = []) =>
  JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1, site: { name } }, features });
const stored = (id: string, revision: number, name = id, features: unknown[] = []): StoredSurvey => ({
  id,
  name,
  changed: 5,
  revision,
  text: textOf(name, features),
});

/** A file that is read when the test says so. */
function slowFile(name: string) {
  const text = later<string>();
  const file = new File(['x'], `${name}.geojson`);
  Object.defineProperty(file, 'text', { value: () => text.promise });
  return { file, read: async () => (text.answer(textOf(name)), settle()), text };
}

function setUp() {
  const kept = new Map<string, StoredSurvey>();
  /** Reads of the store that wait; all others are answered at once. */
  const held = new Map<string, Later<null>>();
  const writes: { survey: SurveyToKeep; known: number }[] = [];
  const world = { refuse: null as string | null, sample: () => Promise.resolve(textOf('Tolverby')) };
  const found: { id: string; reason: string }[] = [];
  const view = new View();
  const document: SurveyDocument = new SurveyDocument(
    { id: 'empty', survey: newSurvey({}), problems: [], readOnly: false },
    () => saving.changed(),
  );
  const read = async (id: string) => {
    await held.get(id)?.promise;
    return kept.get(id) ?? null;
  };
  const saving: Saving = new Saving({
    write: (survey, known): Promise<Written> => {
      if (world.refuse !== null) return Promise.resolve({ ok: false, why: 'refused', reason: world.refuse });
      const theirs = kept.get(survey.id);
      if (theirs && theirs.revision !== known) return Promise.resolve({ ok: false, why: 'conflict', theirs });
      writes.push({ survey, known });
      kept.set(survey.id, { ...survey, revision: known + 1 });
      return Promise.resolve({ ok: true, revision: known + 1 });
    },
    read,
    open: () => ({
      id: document.id,
      name: '',
      facts: { place: '', date: null, spots: 0 },
      text: () => savingSurvey(document.survey),
    }),
    leave: () => undefined,
    forget: () => undefined,
    follow: (theirs) => open.follow(theirs),
    now: () => 1,
  });
  const open: OpenSurvey = new OpenSurvey({
    document,
    saving,
    view,
    store: { read, latest: () => Promise.resolve([...kept.values()].at(-1) ?? null) },
    loadSample: () => world.sample(),
    cannotShow: ({ id }, reason) => void found.push({ id, reason }),
  });
  const name = () => {
    const site = document.survey.sunside['site'] as { name?: string } | undefined;
    return site?.name ?? '';
  };
  return { kept, held, writes, world, found, view, document, saving, open, name };
}

const session = new Map<string, string>();
beforeEach(() => {
  session.clear();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => session.get(key) ?? null,
    setItem: (key: string, value: string) => void session.set(key, value),
  });
  saveFile.mockReset();
});

describe('starting', () => {
  it('[K200] shows what this tab had open, at the revision it was read at', async () => {
    const { kept, document, saving, open, name } = setUp();
    kept.set('mine', stored('mine', 4, 'Mine'));
    kept.set('newer', stored('newer', 9, 'Newer'));
    session.set('sunside-open', 'mine');
    await open.resume();
    expect([document.id, name(), saving.revision]).toEqual(['mine', 'Mine', 4]);
  });

  it('[K200] else the survey changed last, else the sample', async () => {
    const { kept, document, open, name } = setUp();
    session.set('sunside-open', 'gone');
    await open.resume();
    expect(name()).toBe('Tolverby');
    kept.set('newer', stored('newer', 9, 'Newer'));
    session.set('sunside-open', 'gone');
    await open.resume();
    expect([document.id, name()]).toEqual(['newer', 'Newer']);
  });

  it.each([
    ['that is no survey', '{"type": "Point"}', /FeatureCollection/],
    ['that is broken', '{', /not JSON/],
  ])(
    '[K201] with a kept text %s says which one and why, and touches nothing of it',
    async (_, text, reason) => {
      const { kept, writes, found, document, open } = setUp();
      kept.set('bad', { ...stored('bad', 3), text });
      await open.resume();
      expect(found).toEqual([{ id: 'bad', reason: expect.stringMatching(reason) as string }]);
      expect([document.id, writes.length, kept.get('bad')?.text]).toEqual(['empty', 0, text]);
    },
  );

  it('[K201] without the sample, which no network brings, goes on with what is there', async () => {
    const { world, view, document, open } = setUp();
    world.sample = () => Promise.reject(new TypeError('no network'));
    await open.resume();
    expect(document.id).toBe('empty');
    expect(view.notice).toBe('The sample site could not be loaded. Is there a network?');
  });
});

describe('opening', () => {
  it.each([
    ['the slow one last', [1, 0]],
    ['in order', [0, 1]],
  ])('[K202] of two files the one chosen last is shown, %s', async (_, order) => {
    const { writes, view, open, saving, name } = setUp();
    const files = [slowFile('Slow'), slowFile('Chosen')] as const;
    const shown = files.map(({ file }) => open.show(file, { name: file.name, changed: true }));
    for (const i of order) await files[i === 0 ? 0 : 1].read();
    await Promise.all(shown);
    await saving.flush();
    expect(name()).toBe('Chosen');
    expect(writes.map(({ survey }) => openSurvey(survey.text))).toMatchObject([
      { ok: true, survey: { sunside: { site: { name: 'Chosen' } } } },
    ]);
    expect(view.notice).toBeNull();
  });

  it('[K202] a file that fails after another was chosen says nothing', async () => {
    const { view, open, name } = setUp();
    const [slow, chosen] = [slowFile('Slow'), slowFile('Chosen')];
    const shown = [open.show(slow.file), open.show(chosen.file)];
    await chosen.read();
    slow.text.fail(new Error('gone'));
    await Promise.all(shown);
    expect([name(), view.notice]).toEqual(['Chosen', null]);
  });

  it('[K203] a file that cannot be read leaves the open survey and says why', async () => {
    const { view, document, open } = setUp();
    const { file, text } = slowFile('Gone');
    const shown = open.show(file, { name: 'gone.geojson' });
    text.fail(new Error('it was moved'));
    await shown;
    expect(document.id).toBe('empty');
    expect(view.notice).toBe(
      'gone.geojson was not opened. It could not be read: it was moved. The survey that was open stays.',
    );
  });

  it('[K204] a kept survey, a file and the sample: each gives way to the one chosen after it', async () => {
    const { kept, held, world, open, name } = setUp();
    kept.set('kept', stored('kept', 1, 'Kept'));
    const reading = later<null>();
    held.set('kept', reading);
    const sample = later<string>();
    world.sample = () => sample.promise;
    const file = slowFile('File');
    const all = [open.openKept('kept'), open.show(file.file), open.openSample()];
    sample.answer(textOf('Tolverby'));
    await settle();
    await file.read();
    reading.answer(null);
    await Promise.all(all);
    expect(name()).toBe('Tolverby');

    const again = [open.openSample(), open.openKept('kept')];
    await Promise.all(again);
    expect(name()).toBe('Kept');
  });

  it('[K204] a survey that is still being made gives way as well, and is kept once it is shown', async () => {
    const { writes, open, saving, name } = setUp();
    const made = later<{ survey: Survey; notice: string | null }>();
    const starting = open.start(() => made.promise);
    await open.show(textOf('Chosen'));
    made.answer({ survey: newSurvey({ name: 'Slow' }), notice: 'A new survey.' });
    await starting;
    expect(name()).toBe('Chosen');

    await open.start(() => Promise.resolve({ survey: newSurvey({ name: 'New' }), notice: null }));
    await saving.flush();
    expect([name(), writes.length]).toEqual(['New', 1]);
  });

  it('[K205] what is typed while a file is read is kept before the file takes its place', async () => {
    const { writes, document, open, name } = setUp();
    const { file, read } = slowFile('File');
    const shown = open.show(file);
    document.perform('type', (s) => setSite(s, { name: 'Typed' }));
    await read();
    await shown;
    expect(name()).toBe('File');
    expect(writes[0]?.survey).toMatchObject({
      id: 'empty',
      text: expect.stringContaining('Typed') as string,
    });
  });

  it('[K206] where nothing is kept the user decides, and a file chosen after that wins', async () => {
    const { world, view, document, open, name } = setUp();
    world.refuse = 'no room';
    document.perform('type', (s) => setSite(s, { name: 'Typed' }));
    await open.show(textOf('First'));
    expect(name()).toBe('Typed');
    const discard = view.noticeActions.find(({ label }) => label === 'Discard the changes');
    const second = slowFile('Second');
    const shown = open.show(second.file);
    // Answered late, to the question about the first one.
    discard?.run();
    expect(name()).toBe('Typed');
    await second.read();
    await shown;
    view.noticeActions.find(({ label }) => label === 'Discard the changes')?.run();
    expect(name()).toBe('Second');
  });

  it('[K207] a save that is answered after another survey was opened does not write that one over the file', async () => {
    const { document, open, name } = setUp();
    const asked = later<{ handle: unknown }>();
    saveFile.mockReturnValueOnce(asked.promise).mockResolvedValue({ handle: null });
    const saved = open.save();
    await open.show(textOf('Other'));
    asked.answer({ handle: 'the first file' });
    await saved;
    await open.save();
    expect(name()).toBe('Other');
    expect(saveFile.mock.lastCall?.[3]).toBeNull();
    expect(document.undoLabel).toBeNull();
  });
});

describe('following another tab', () => {
  async function withSpots() {
    const world = setUp();
    world.kept.set('mine', stored('mine', 1, 'Mine', [spot('s1', 8.5), spot('s2', 8.6)]));
    await world.open.openKept('mine');
    return world;
  }
  const note = (revision: number) => ({ id: 'mine', revision });

  it('[K208] shows its state, and leaves selection, tool, drawing, camera and notice as they were', async () => {
    const { kept, view, saving, name } = await withSpots();
    view.selection.select('s2');
    view.hand.tool = 'apron';
    view.hand.drawing = [
      [8.5, 47.5],
      [8.51, 47.5],
    ];
    view.viewfinder.camera = { ...view.viewfinder.camera, focalLength: 400 };
    view.shown.configuration = 1;
    view.notice = 'Something to read';
    kept.set('mine', stored('mine', 2, 'Theirs', [spot('s2', 8.7)]));
    await saving.heard(note(2));
    expect([name(), saving.revision]).toEqual(['Theirs', 2]);
    expect([view.selection.id, view.hand.tool]).toEqual(['s2', 'apron']);
    expect([view.shown.configuration, view.notice]).toEqual([1, 'Something to read']);
    expect(view.hand.drawing).toHaveLength(2);
    expect(view.viewfinder.camera.focalLength).toBe(400);
    expect(saving.status.text).toBe('Changed in another tab, and shown as it is there');
  });

  it('[K208] lets go of what the other tab has deleted', async () => {
    const { kept, view, saving } = await withSpots();
    view.selection.select('s1');
    kept.set('mine', stored('mine', 2, 'Theirs', [spot('s2', 8.7)]));
    await saving.heard(note(2));
    expect(view.selection.id).toBeNull();
  });

  it('[K209] of two states the newer one stays, whichever is read first', async () => {
    const { open, name } = await withSpots();
    const following = [open.follow(stored('mine', 2, 'Second')), open.follow(stored('mine', 3, 'Third'))];
    expect(await Promise.all(following)).toEqual([false, true]);
    expect(name()).toBe('Third');
  });

  it('[K210] does not stop an opening, and does not come over what was opened', async () => {
    const { document, open, name } = await withSpots();
    const chosen = slowFile('Chosen');
    const shown = open.show(chosen.file);
    expect(await open.follow(stored('mine', 2, 'Theirs'))).toBe(true);
    await chosen.read();
    await shown;
    expect(name()).toBe('Chosen');
    expect(await open.follow(stored('mine', 3, 'Late'))).toBe(false);
    expect([name(), document.id === 'mine']).toEqual(['Chosen', false]);
  });

  it('[K211] an edit made meanwhile is not lost: the user decides between the two states', async () => {
    const { kept, document, saving, open, name } = await withSpots();
    const theirs = stored('mine', 2, 'Theirs');
    kept.set('mine', theirs);
    const following = open.follow(theirs);
    document.perform('type', (s) => setSite(s, { name: 'Mine still' }));
    expect(await following).toBe(false);
    await saving.flush();
    expect([name(), saving.theirs?.revision]).toEqual(['Mine still', 2]);
  });

  it('[K212] a state that cannot be read leaves this one, and it is said', async () => {
    const { view, open, name } = await withSpots();
    expect(await open.follow({ ...stored('mine', 2), text: '{' })).toBe(false);
    expect(name()).toBe('Mine');
    expect(view.notice).toMatch(/^What another tab has saved is not shown\. .*not JSON/);
  });
});

describe('two states of one survey', () => {
  async function inConflict() {
    const world = setUp();
    world.kept.set('mine', stored('mine', 1, 'Mine', [spot('s1', 8.5)]));
    await world.open.openKept('mine');
    const { document, saving, kept } = world;
    kept.set('mine', stored('mine', 2, 'Theirs', [spot('s1', 8.9)]));
    document.perform('draw', (s) =>
      addFeature(s, 'new', 'standing-spot', { type: 'Point', coordinates: [8, 47] }, {}),
    );
    await saving.flush();
    const { theirs } = saving;
    if (!theirs) throw new Error('expected a conflict');
    return { ...world, theirs };
  }

  it('[K213] mine goes on as a copy of its own, with its history; theirs stays under the name', async () => {
    const { kept, document, saving, open, name } = await inConflict();
    await open.keepMine();
    expect([name(), saving.theirs, document.id === 'mine']).toEqual(['Mine (copy)', null, false]);
    expect(kept.get('mine')?.name).toBe('Theirs');
    expect(kept.get(document.id)?.text).toContain('"new"');
    document.undo();
    expect(document.undoLabel).toBe('draw');
  });

  it('[K213] theirs is shown in its newest state, and what was selected stays so', async () => {
    const { kept, view, saving, open, theirs, name } = await inConflict();
    view.selection.select('s1');
    kept.set('mine', stored('mine', 5, 'Theirs at last', [spot('s1', 8.9)]));
    await open.takeTheirs(theirs);
    expect([name(), saving.revision, saving.theirs, view.selection.id]).toEqual([
      'Theirs at last',
      5,
      null,
      's1',
    ]);
  });

  it('[K214] opening another one keeps mine as a copy first', async () => {
    const { kept, open, name } = await inConflict();
    await open.show(textOf('Other'));
    expect(name()).toBe('Other');
    expect([...kept.values()].map((survey) => openSurvey(survey.text))).toContainEqual(
      expect.objectContaining({
        survey: expect.objectContaining({
          sunside: { version: 1, site: { name: 'Mine (copy)' } },
        }) as unknown,
      }),
    );
  });

  it('[K214] theirs, asked for before another one was opened, does not come over that one', async () => {
    const { held, open, theirs, name } = await inConflict();
    const reading = later<null>();
    held.set('mine', reading);
    const taking = open.takeTheirs(theirs);
    await open.show(textOf('Other'));
    reading.answer(null);
    await taking;
    expect(name()).toBe('Other');
  });
});

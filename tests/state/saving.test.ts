import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Saving } from '../../src/state/saving.svelte';
import type { Written } from '../../src/storage/autosave';
import type { StoredSurvey, SurveyToKeep } from '../../src/storage/records';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A store whose answers the test gives, and a survey whose text the test sets. */
function setUp() {
  const writes: { survey: SurveyToKeep; known: number; answer: (written: Written) => Promise<void> }[] = [];
  const followed: StoredSurvey[] = [];
  const left: { text: string; known: number }[] = [];
  const world = { id: 'mine', text: 'first', kept: null as StoredSurvey | null };
  /** Making a text: how many steps it takes, ms each. */
  const steps = { of: 0, each: 5, taken: 0 };
  const saving: Saving = new Saving({
    write: (survey, known) =>
      new Promise((resolve) => {
        writes.push({
          survey,
          known,
          answer: async (written) => {
            resolve(written);
            await vi.advanceTimersByTimeAsync(0);
          },
        });
      }),
    read: (id) => Promise.resolve(world.kept?.id === id ? world.kept : null),
    open: () => {
      const { id, text } = world;
      return {
        id,
        name: `Name of ${id}`,
        facts: { place: '', date: null, spots: 2 },
        *text() {
          for (let i = steps.of; i > 0; i--) {
            steps.taken++;
            vi.advanceTimersByTime(steps.each);
            yield;
          }
          return text;
        },
      };
    },
    leave: ({ text }, known) => void left.push({ text, known }),
    forget: () => void left.splice(0),
    follow: (theirs) => {
      followed.push(theirs);
      saving.opened(theirs.revision);
      return Promise.resolve(true);
    },
    now: () => 1_000,
  });
  const change = (text: string) => {
    world.text = text;
    saving.changed();
  };
  const write = (i: number) => {
    const found = writes[i];
    if (!found) throw new Error(`expected write ${i}, got ${writes.length} writes`);
    return found;
  };
  return { saving, writes, write, followed, left, world, change, steps };
}

const theirs = (revision: number, id = 'mine'): StoredSurvey => ({
  id,
  name: 'Theirs',
  changed: 5,
  revision,
  text: `theirs ${revision}`,
});

describe('saving the open survey', () => {
  it('[K1044] makes a long text in slices, and writes what was there when it began', async () => {
    const { saving, writes, write, change, steps } = setUp();
    saving.opened(3);
    steps.of = 40;
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    const first = steps.taken;
    expect(first).toBeLessThan(5);
    expect(writes).toHaveLength(0);
    steps.of = 0;
    change('third');
    await vi.waitFor(() => expect(writes).toHaveLength(1));
    expect(steps.taken).toBe(40);
    expect(write(0)).toMatchObject({ known: 3, survey: { text: 'second' } });
    await write(0).answer({ ok: true, revision: 4 });
    await vi.waitFor(() => expect(writes).toHaveLength(2));
    expect(write(1)).toMatchObject({ known: 4, survey: { text: 'third' } });
  });

  it('[K1045] leaves the last words at once, though their text is being made', async () => {
    const { saving, writes, left, change, steps } = setUp();
    saving.opened(3);
    steps.of = 40;
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    expect(writes).toHaveLength(0);
    void saving.pageGoes(false);
    expect(left).toEqual([{ text: 'second', known: 3 }]);
    await vi.waitFor(() => expect(writes).toHaveLength(1));
  });

  it('[K3] writes 250 ms after the first change, with the text of the last one', async () => {
    const { saving, writes, write, change } = setUp();
    saving.opened(3);
    change('second');
    expect(saving.status).toEqual({ text: 'Saving …', trouble: false });
    await vi.advanceTimersByTimeAsync(200);
    change('third');
    await vi.advanceTimersByTimeAsync(49);
    expect(writes).toHaveLength(0);
    await vi.advanceTimersByTimeAsync(1);
    expect(write(0).known).toBe(3);
    expect(write(0).survey).toEqual({
      id: 'mine',
      name: 'Name of mine',
      changed: 1_000,
      text: 'third',
      facts: { place: '', date: null, spots: 2 },
    });
    await write(0).answer({ ok: true, revision: 4 });
    expect(saving.status).toEqual({ text: 'Kept on this device', trouble: false });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(writes).toHaveLength(1);
  });

  it('[K3] writes on and on while changes do not stop', async () => {
    const { saving, writes, change } = setUp();
    saving.opened(1);
    for (let i = 0; i < 20; i++) {
      change(`move ${i}`);
      await vi.advanceTimersByTimeAsync(50);
      await writes.at(-1)?.answer({ ok: true, revision: writes.length + 1 });
    }
    expect(writes.map((w) => w.survey.text)).toEqual(['move 4', 'move 9', 'move 14', 'move 19']);
  });

  it('has one write at a time, and a second with what changed meanwhile', async () => {
    const { saving, writes, write, change } = setUp();
    saving.opened(0);
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    change('third');
    await vi.advanceTimersByTimeAsync(5_000);
    expect(writes).toHaveLength(1);
    await write(0).answer({ ok: true, revision: 1 });
    expect(saving.status.text).toBe('Saving …');
    expect(write(1)).toMatchObject({ known: 1, survey: { text: 'third' } });
    await write(1).answer({ ok: true, revision: 2 });
    expect(saving.status.text).toBe('Kept on this device');
  });

  it('writes at once when the page is about to go, and nothing when nothing has changed', async () => {
    const { saving, writes, write, change } = setUp();
    saving.opened(2);
    await saving.flush();
    expect(writes).toHaveLength(0);
    change('last words');
    const flushed = saving.flush();
    await vi.advanceTimersByTimeAsync(0);
    expect(write(0).survey.text).toBe('last words');
    await write(0).answer({ ok: true, revision: 3 });
    await flushed;
    await vi.advanceTimersByTimeAsync(60_000);
    expect(writes).toHaveLength(1);
  });

  it('does not take the answer to a write of the survey before for its own', async () => {
    const { saving, write, world, change } = setUp();
    saving.opened(1);
    change('old survey');
    await vi.advanceTimersByTimeAsync(250);
    world.id = 'other';
    saving.opened(8);
    await write(0).answer({ ok: false, why: 'conflict', theirs: theirs(2) });
    expect(saving.theirs).toBeNull();
    change('other survey');
    await vi.advanceTimersByTimeAsync(250);
    expect(write(1)).toMatchObject({ known: 8, survey: { id: 'other', text: 'other survey' } });
  });

  it('goes on after a survey that could not be made into text', async () => {
    const { saving, write, world, change } = setUp();
    saving.opened(0);
    Object.defineProperty(world, 'text', {
      configurable: true,
      get: () => {
        throw new Error('expected a survey');
      },
    });
    saving.changed();
    await expect(saving.flush()).rejects.toThrow('expected a survey');
    Object.defineProperty(world, 'text', { value: '', writable: true });
    change('fine again');
    void saving.flush();
    await vi.advanceTimersByTimeAsync(0);
    expect(write(0).survey.text).toBe('fine again');
  });
});

describe('a page that goes', () => {
  it('[K5] puts down what is not written yet, and forgets it once it is', async () => {
    const { saving, write, left, change } = setUp();
    saving.opened(6);
    change('last words');
    void saving.pageGoes(true);
    expect(left).toEqual([{ text: 'last words', known: 6 }]);
    await vi.advanceTimersByTimeAsync(0);
    await write(0).answer({ ok: true, revision: 7 });
    expect(left).toEqual([]);
  });

  it('[K5] puts down what a write that is under way may not live to keep', async () => {
    const { saving, write, left, change } = setUp();
    saving.opened(6);
    change('under way');
    await vi.advanceTimersByTimeAsync(250);
    void saving.pageGoes(false);
    expect(left).toEqual([{ text: 'under way', known: 6 }]);
    await write(0).answer({ ok: true, revision: 7 });
    expect(left).toEqual([]);
    void saving.pageGoes(false);
    expect(left).toEqual([]);
  });

  it('[K5] puts down what lost a race, too', async () => {
    const { saving, write, left, change } = setUp();
    saving.opened(6);
    change('mine');
    await vi.advanceTimersByTimeAsync(250);
    await write(0).answer({ ok: false, why: 'conflict', theirs: theirs(7) });
    void saving.pageGoes(true);
    expect(left).toEqual([]);
    void saving.pageGoes(false);
    expect(left).toEqual([{ text: 'mine', known: 6 }]);
    saving.opened(0);
    expect(left).toEqual([]);
  });

  it('[K5] is not in conflict with a page that has kept what it put down', async () => {
    const { saving, write, left, change } = setUp();
    saving.opened(6);
    change('the same');
    void saving.pageGoes(false);
    await vi.advanceTimersByTimeAsync(0);
    await write(0).answer({ ok: false, why: 'conflict', theirs: { ...theirs(7), text: 'the same' } });
    expect(saving.theirs).toBeNull();
    expect(saving.revision).toBe(7);
    expect(left).toEqual([]);
  });
});

describe('a browser that refuses', () => {
  it('[K4] is said at once, and tried again with the next change, later, and when the page goes', async () => {
    const { saving, writes, write, change } = setUp();
    saving.opened(0);
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    await write(0).answer({ ok: false, why: 'refused', reason: 'there is no room left for it' });
    expect(saving.status).toEqual({ text: 'Not kept on this device', trouble: true });
    expect(saving.refused).toBe('there is no room left for it');
    expect(saving.atRisk).toBe(true);

    change('third');
    await vi.advanceTimersByTimeAsync(200);
    change('fourth');
    await vi.advanceTimersByTimeAsync(50);
    expect(write(1)).toMatchObject({ known: 0, survey: { text: 'fourth' } });
    await write(1).answer({ ok: false, why: 'refused', reason: 'there is no room left for it' });

    await vi.advanceTimersByTimeAsync(9_999);
    expect(writes).toHaveLength(2);
    await vi.advanceTimersByTimeAsync(1);
    await write(2).answer({ ok: false, why: 'refused', reason: 'there is no room left for it' });

    void saving.flush();
    await vi.advanceTimersByTimeAsync(0);
    await write(3).answer({ ok: true, revision: 1 });
    expect(saving.status).toEqual({ text: 'Kept on this device', trouble: false });
    expect(saving.refused).toBeNull();
    expect(saving.atRisk).toBe(false);
  });

  it('puts nothing at risk once the survey is in a file, until it changes again', async () => {
    const { saving, write, writes, change } = setUp();
    saving.opened(0);
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    await write(0).answer({ ok: false, why: 'refused', reason: 'no' });
    saving.savedToFile();
    expect(saving.atRisk).toBe(false);
    expect(saving.status).toEqual({ text: 'Saved to a file, not kept on this device', trouble: true });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(writes).toHaveLength(1);
    change('third');
    expect(saving.atRisk).toBe(true);
    await vi.advanceTimersByTimeAsync(250);
    expect(write(1).survey.text).toBe('third');
  });
});

describe('two tabs on one survey', () => {
  it('[K2] stops writing after a lost race, until the user has decided', async () => {
    const { saving, writes, write, world, change } = setUp();
    saving.opened(4);
    change('mine');
    await vi.advanceTimersByTimeAsync(250);
    await write(0).answer({ ok: false, why: 'conflict', theirs: theirs(5) });
    expect(saving.theirs).toEqual(theirs(5));
    expect(saving.status).toEqual({ text: 'Changed in another tab', trouble: true });
    expect(saving.atRisk).toBe(true);
    change('mine again');
    await saving.flush();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(writes).toHaveLength(1);
    world.id = 'copy of mine';
    saving.opened(0);
    change('mine again');
    await vi.advanceTimersByTimeAsync(250);
    expect(write(1)).toMatchObject({ known: 0, survey: { id: 'copy of mine', text: 'mine again' } });
  });

  it('[K2] follows the other tab when nothing here is unsaved', async () => {
    const { saving, followed, world } = setUp();
    saving.opened(4);
    world.kept = theirs(6);
    await saving.heard({ id: 'mine', revision: 6 });
    expect(followed).toEqual([theirs(6)]);
    expect(saving.revision).toBe(6);
    expect(saving.status).toEqual({
      text: 'Changed in another tab, and shown as it is there',
      trouble: false,
    });
    await saving.heard({ id: 'mine', revision: 6 });
    expect(followed).toHaveLength(1);
  });

  it('[K2] says at once that the other tab was first when something here is unsaved', async () => {
    const { saving, followed, writes, world, change } = setUp();
    saving.opened(4);
    change('mine');
    world.kept = theirs(5);
    await saving.heard({ id: 'mine', revision: 5 });
    expect(saving.theirs).toEqual(theirs(5));
    expect(followed).toEqual([]);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(writes).toHaveLength(0);
  });

  it('waits for its own write before it judges another one', async () => {
    const { saving, write, followed, world, change } = setUp();
    saving.opened(4);
    change('mine');
    await vi.advanceTimersByTimeAsync(250);
    world.kept = theirs(6);
    const heard = saving.heard({ id: 'mine', revision: 6 });
    await vi.advanceTimersByTimeAsync(0);
    expect(followed).toEqual([]);
    await write(0).answer({ ok: true, revision: 5 });
    await heard;
    expect(followed).toEqual([theirs(6)]);
  });

  it('does not care for other surveys, older revisions, and those that were deleted', async () => {
    const { saving, followed, world } = setUp();
    saving.opened(4);
    world.kept = theirs(9);
    await saving.heard({ id: 'another', revision: 9 });
    await saving.heard({ id: 'mine', revision: 4 });
    await saving.heard({ id: 'mine', revision: null });
    expect(followed).toEqual([]);
    expect(saving.theirs).toBeNull();
  });
});

describe('another tab was first', () => {
  it('[K20] what both came from is at hand, and what was taken in is written over', async () => {
    const { saving, write, change } = setUp();
    saving.opened(3);
    change('second');
    await vi.advanceTimersByTimeAsync(250);
    await write(0).answer({ ok: true, revision: 4 });
    change('third');
    expect(saving.began).toBe('second');
    await vi.advanceTimersByTimeAsync(250);
    await write(1).answer({ ok: false, why: 'conflict', theirs: theirs(5) });
    expect(saving.began).toBe('second');
    const lost = saving.theirs;
    if (!lost) throw new Error('expected a conflict');
    change('both');
    saving.tookIn(lost);
    expect([saving.theirs, saving.began]).toEqual([null, 'theirs 5']);
    await vi.advanceTimersByTimeAsync(250);
    expect(write(2)).toMatchObject({ known: 5, survey: { text: 'both' } });
    // The other tab was quicker once more: asked again, from what was merged.
    await write(2).answer({ ok: false, why: 'conflict', theirs: theirs(6) });
    expect([saving.theirs?.revision, saving.began]).toEqual([6, 'theirs 5']);
  });
});

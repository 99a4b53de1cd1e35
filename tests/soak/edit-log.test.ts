import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EditLog } from './edit-log';

beforeEach(() => void vi.useFakeTimers({ now: 10_000 }));
afterEach(() => void vi.useRealTimers());

const done = () => Promise.resolve();

/** Three edits, taken at 10,000, 10,400 and 11,000 ms. */
async function threeEdits(): Promise<EditLog> {
  const log = new EditLog({ name: 'start', lng: 18 });
  await log.make({ name: 'first' }, done);
  vi.setSystemTime(10_400);
  await log.make({ lng: 18.01 }, done);
  vi.setSystemTime(11_000);
  await log.make({ name: 'third' }, done);
  return log;
}

describe('the log of edits', () => {
  it('finds nothing lost when the last state is kept', async () => {
    const log = await threeEdits();
    expect(log.lossOf({ name: 'third', lng: 18.01 }, 11_200)).toEqual({
      edits: 3,
      lost: 0,
      oldestLost: 0,
      lostOld: 0,
      lostKept: 0,
    });
  });

  it('counts what is lost, and what of it was older than a second', async () => {
    const log = await threeEdits();
    expect(log.lossOf({ name: 'first', lng: 18 }, 11_500)).toMatchObject({
      lost: 2,
      oldestLost: 1_100,
      lostOld: 1,
    });
    expect(log.lossOf({ name: 'start', lng: 18 }, 11_500)).toMatchObject({ lost: 3, lostOld: 2 });
  });

  it('counts what is lost although it was said to be kept', async () => {
    const log = await threeEdits();
    log.keptSoFar();
    expect(log.lossOf({ name: 'first', lng: 18.01 }, 11_001)).toMatchObject({ lostKept: 1, lostOld: 0 });
  });

  it('blames nobody for an edit that the page had not taken yet', async () => {
    const log = await threeEdits();
    void log.make({ name: 'never taken' }, () => new Promise(() => undefined));
    expect(log.lossOf({ name: 'third', lng: 18.01 }, 20_000)).toMatchObject({ edits: 4, lost: 0 });
    expect(log.lossOf({ name: 'never taken', lng: 18.01 }, 20_000)).toMatchObject({ lost: 0 });
  });

  it('refuses a state that never was', async () => {
    const log = await threeEdits();
    expect(() => log.lossOf({ name: 'third', lng: 18 }, 11_200)).toThrow('a state that the survey had');
  });
});

import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { TerrainReading } from '../../src/imports/terrain/read-geotiff';
import { SunsideGroundHeights } from '../../src/services/ground-heights';
import { Terrain } from '../../src/state/terrain.svelte';
import type { PickedFile } from '../../src/storage/files';
import type { Outcome } from '../../src/storage/records';
import type { Position } from '../../src/survey/document';

/** Files are picked and read when the test says so, in the order that the test wants. */
const world = vi.hoisted(() => ({
  picks: [] as (PickedFile | null)[],
  readings: [] as { name: string; about: unknown; answer: (reading: unknown) => void; fail: () => void }[],
}));
vi.mock('../../src/storage/files', () => ({ pickFile: () => Promise.resolve(world.picks.shift() ?? null) }));
vi.mock('../../src/imports/terrain/read-geotiff', () => ({
  readGeotiff: (file: File, about: unknown) =>
    new Promise((answer, fail) => world.readings.push({ name: file.name, about, answer, fail })),
}));

const [home, away]: Position[] = [
  [8.5, 47.4],
  [18.2, 50.9],
];
const grid = (north: number) => ({
  columns: 2,
  rows: 2,
  west: 8,
  north,
  stepLng: 1,
  stepLat: 1,
  heights: new Float32Array(4),
});
const good = (north: number): TerrainReading => ({ ok: true, grid: grid(north) });

function setUp(chosen: string | null = null) {
  const terrain = new Terrain();
  const kept = new Map<string, Blob>();
  const keeps: ((outcome: Outcome<void>) => void)[] = [];
  const choice = { read: () => chosen, write: (text: string) => ((chosen = text), true) };
  const files = {
    keep: (key: string, file: Blob) =>
      new Promise<Outcome<void>>((resolve) =>
        keeps.push((outcome) => {
          if (outcome.ok) kept.set(key, file);
          resolve(outcome);
        }),
      ),
    read: (key: string) => Promise.resolve(kept.get(key) ?? null),
    forget: (key: string) => {
      kept.delete(key);
      return Promise.resolve({ ok: true as const, value: undefined });
    },
  };
  const heights = new SunsideGroundHeights({ terrain, files, choice, sample: { url: 'x', near: [0, 0] } });
  const pick = (name: string, about = home as Position) => {
    world.picks.push({ file: new File(['II*'], name), handle: null });
    return heights.pickFile(about);
  };
  return { terrain, kept, keeps, choice, heights, pick };
}

/** The reading of a file, once it has begun. */
const reading = (i: number) =>
  vi.waitFor(() => {
    const found = world.readings[i];
    if (!found) throw new Error(`expected reading ${i}, got ${world.readings.length}`);
    return found;
  });
const keep = <T>(keeps: readonly T[], i: number) =>
  vi.waitFor(() => {
    const found = keeps[i];
    if (!found) throw new Error(`expected keep ${i}, got ${keeps.length}`);
    return found;
  });
const yes: Outcome<void> = { ok: true, value: undefined };

beforeEach(() => {
  world.picks.length = 0;
  world.readings.length = 0;
});

describe('heights from a file', () => {
  test('[F401] are used, kept, and chosen for every airfield', async () => {
    const { terrain, kept, keeps, choice, pick } = setUp();
    const picked = pick('hill.tif');
    (await reading(0)).answer(good(50));
    (await keep(keeps, 0))(yes);
    await picked;
    expect(terrain.grid?.north).toBe(50);
    expect([...kept.values()].map((file) => (file as File).name)).toEqual(['hill.tif']);
    expect(choice.read()).toBe('file');
    expect(terrain.remark).toBeNull();
  });

  test('[F402] that the device refuses to keep are used, and it is said that they will be gone', async () => {
    const { terrain, keeps, choice, pick } = setUp('online');
    const picked = pick('hill.tif');
    (await reading(0)).answer(good(50));
    (await keep(keeps, 0))({ ok: false, reason: 'there is no room left for it' });
    await picked;
    expect(terrain.state).toBe('loaded');
    expect(terrain.remark).toBe(
      '"hill.tif" is used now, but it could not be kept on this device: there is no room left for it. Choose it again after the next start.',
    );
    // The next start must not look for a file that is not there.
    expect(choice.read()).toBe('online');
  });

  test('[F403] that cannot be used are not kept', async () => {
    const { terrain, keeps, choice, pick } = setUp();
    const picked = pick('song.tif');
    (await reading(0)).answer({ ok: false, reason: 'it is no picture' });
    await picked;
    expect(terrain.reason).toBe('song.tif cannot be used: it is no picture.');
    expect([keeps.length, choice.read()]).toEqual([0, null]);
  });

  test.each([
    ['the slow one last', [1, 0]],
    ['in order', [0, 1]],
  ])('[F404] of two picked files the second is used and kept, %s', async (_, order) => {
    const { terrain, kept, keeps, pick } = setUp();
    const slow = pick('slow.tif');
    await reading(0);
    const chosen = pick('chosen.tif');
    await reading(1);
    await reading(1);
    for (const i of order) (await reading(i)).answer(good(i === 0 ? 10 : 20));
    (await keep(keeps, 0))(yes);
    await Promise.all([slow, chosen]);
    expect(terrain.grid?.north).toBe(20);
    expect([...kept.values()].map((file) => (file as File).name)).toEqual(['chosen.tif']);
  });

  test('[F405] switched off while they are read stay off', async () => {
    const { terrain, kept, choice, heights, pick } = setUp();
    const picked = pick('hill.tif');
    const read = await reading(0);
    heights.none();
    read.answer(good(50));
    await picked;
    expect([terrain.state, terrain.grid, kept.size, choice.read()]).toEqual(['none', null, 0, 'none']);
  });

  test('[F405] switched off while they are kept are not kept', async () => {
    const { kept, keeps, choice, heights, pick } = setUp();
    const picked = pick('hill.tif');
    (await reading(0)).answer(good(50));
    const keeping = await keep(keeps, 0);
    heights.none();
    keeping(yes);
    await picked;
    expect([kept.size, choice.read()]).toEqual([0, 'none']);
  });

  test('[F406] picked while another airfield is opened are for that one too', async () => {
    const { terrain, keeps, choice, heights, pick } = setUp();
    const picked = pick('hill.tif', home);
    const first = await reading(0);
    await heights.look(away as Position);
    expect(terrain.state).toBe('none');
    first.answer(good(47));
    (await keep(keeps, 0))(yes);
    const second = await reading(1);
    expect(second.about).toEqual(away);
    second.answer(good(51));
    await picked;
    expect([terrain.state, terrain.grid?.north, choice.read()]).toEqual(['loaded', 51, 'file']);
  });

  test('[F407] of the airfield before are dropped when they come late', async () => {
    const { terrain, keeps, heights, pick } = setUp();
    const picked = pick('hill.tif');
    (await reading(0)).answer(good(1));
    (await keep(keeps, 0))(yes);
    await picked;
    const before = heights.look(home as Position);
    await reading(1);
    const now = heights.look(away as Position);
    (await reading(2)).answer(good(51));
    (await reading(1)).answer(good(47));
    await Promise.all([before, now]);
    expect(terrain.grid?.north).toBe(51);
  });
});

test('[X1080] a file that cannot be read has nothing to do with being online', async () => {
  const { terrain, pick, choice } = setUp();
  const picking = pick('gone.tif');
  (await reading(0)).fail();
  await picking;
  expect(terrain.state).toBe('failed');
  expect(terrain.reason).toMatch(/the file could not be read.*[Cc]hoose it again/);
  expect(choice.read()).toBeNull();
});

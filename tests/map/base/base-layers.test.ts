import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { BaseLayers, type BaseHost, type TileId } from '../../../src/map/base/base-layers';
import { UnusableBase, type BaseParts } from '../../../src/map/base/base-parts';
import { slots } from '../../../src/map/layers';
import type { BaseGround, BaseReport } from '../../../src/state/base-maps/ground';

const source = 'base:map';
const tiles = (name: string): BaseGround => ({
  kind: 'tiles',
  name,
  template: `https://${name}.example.org/{z}/{x}/{y}.png`,
  maxZoom: 19,
  credit: [],
});
const parts = (name: string): BaseParts => ({
  sources: { [source]: { type: 'raster', tiles: [name] } },
  layers: [
    { id: 'base:page', type: 'background' },
    { id: 'base:raster', type: 'raster', source },
  ],
  isOnPaper: false,
  glyphs: 'https://fonts.example.org/{fontstack}/{range}.pbf',
  sprites: [{ id: 'default', url: 'https://sprites.example.org/a' }],
  credit: [{ text: `Credit of ${name}`, href: null }],
});
const tile = (x: number): TileId => ({ z: 3, x, y: 1 });

/** A map that remembers what was put into it. */
class Host implements BaseHost {
  readonly layers = new Map<string, string>();
  readonly sources = new Map<string, unknown>();
  readonly visible = new Map<string, boolean>();
  readonly again: (readonly TileId[])[] = [];
  glyphs: string | null = null;
  sprites = new Set<string>();
  addSource = (id: string, value: unknown) => void this.sources.set(id, value);
  removeSource = (id: string) => {
    if ([...this.layers.keys()].includes('base:raster')) throw new Error('expected its layers to be gone');
    this.sources.delete(id);
  };
  addLayer = ({ id }: { id: string }, before: string) => void this.layers.set(id, before);
  removeLayer = (id: string) => void this.layers.delete(id);
  setVisible = (id: string, visible: boolean) => void this.visible.set(id, visible);
  setGlyphs = (url: string | null) => (this.glyphs = url);
  addSprite = (id: string) => void this.sprites.add(id);
  removeSprite = (id: string) => void this.sprites.delete(id);
  askAgain = (_: string, failed: readonly TileId[]) => void this.again.push(failed);
  isSettled = () => true;
  attribution = () => '<b>Data office</b>';
}

const settled = () => vi.advanceTimersByTimeAsync(0);

describe('a base map under the survey', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  const begun = async (
    read: (ground: BaseGround) => Promise<BaseParts> = (g) => Promise.resolve(parts(nameOf(g))),
  ) => {
    const host = new Host();
    const told: BaseReport[] = [];
    const reads: string[] = [];
    const base = new BaseLayers(
      host,
      (report) => told.push(report),
      (ground) => {
        reads.push(nameOf(ground));
        return read(ground);
      },
    );
    base.show(tiles('a'), true);
    await settled();
    return { host, told, base, reads, last: () => told.at(-1) };
  };
  const nameOf = (ground: BaseGround) => ('name' in ground ? ground.name : '');

  test('[M10] is put under the survey, and its ground is seen only once a tile has come', async () => {
    const { host, base, last } = await begun();
    expect([...host.layers]).toEqual([
      ['base:page', slots.base],
      ['base:raster', slots.base],
    ]);
    expect([host.visible.get('base:page'), host.visible.get(slots.base)]).toEqual([false, false]);
    expect(last()).toEqual({
      health: 'waiting',
      credit: [
        { text: 'Credit of a', href: null },
        { text: 'Data office', href: null },
      ],
      reason: null,
    });
    base.came(source, tile(0));
    expect([host.visible.get('base:page'), host.visible.get(slots.base)]).toEqual([true, true]);
    expect(last()?.health).toBe('shown');
  });

  test('[M10] leaves nothing behind', async () => {
    const { host, base } = await begun();
    base.show({ kind: 'plain' }, true);
    await settled();
    expect([host.layers.size, host.sources.size, host.sprites.size, host.glyphs]).toEqual([0, 0, 0, null]);
    expect(host.visible.get(slots.base)).toBe(false);
  });

  test('[M10] that is slow to be read does not come after another one was chosen', async () => {
    const answers: ((value: BaseParts) => void)[] = [];
    const { host, base } = await begun(() => new Promise((resolve) => answers.push(resolve)));
    base.show(tiles('b'), true);
    answers[1]?.(parts('b'));
    await settled();
    answers[0]?.(parts('a'));
    await settled();
    expect(host.sources.get(source)).toEqual(parts('b').sources[source]);
  });

  test('[M200] is closed when another one takes its place, when it comes too late, and with the map', async () => {
    const closed: string[] = [];
    const closing = (name: string): BaseParts => ({ ...parts(name), close: () => void closed.push(name) });
    const answers: ((value: BaseParts) => void)[] = [];
    const { base } = await begun(() => new Promise((resolve) => answers.push(resolve)));
    base.show(tiles('b'), true);
    answers[1]?.(closing('b'));
    answers[0]?.(closing('a'));
    await settled();
    expect(closed).toEqual(['a']);
    base.show(tiles('c'), true);
    answers[2]?.(closing('c'));
    await settled();
    expect(closed).toEqual(['a', 'b']);
    base.remove();
    expect(closed).toEqual(['a', 'b', 'c']);
  });

  test('[M11] out of reach: tells once, hides what covers the plain plan, and asks again for what failed', async () => {
    const { host, told, base, last } = await begun();
    base.came(source, tile(0));
    for (const x of [1, 2, 3, 4]) expect(base.failed(source, tile(x))).toBe(true);
    expect(told.map(({ health }) => health)).toEqual(['waiting', 'shown', 'unreachable']);
    expect([host.visible.get('base:page'), host.visible.get(slots.base)]).toEqual([false, false]);
    base.retry();
    expect(host.again).toEqual([[tile(1), tile(2), tile(3), tile(4)]]);
    base.came(source, tile(1));
    expect(last()?.health).toBe('shown');
  });

  test('[M11] asks again by itself, less and less often', async () => {
    const { base, reads } = await begun(() => Promise.reject(new Error('no network')));
    expect(reads).toHaveLength(1);
    const after = async (seconds: number) => {
      await vi.advanceTimersByTimeAsync(seconds * 1000);
      return reads.length;
    };
    expect(await after(14)).toBe(1);
    expect(await after(2)).toBe(2);
    expect(await after(28)).toBe(2);
    expect(await after(3)).toBe(3);
    expect(await after(3600)).toBeLessThan(22);
    base.remove();
  });

  test('[M11] asks nobody any more once another map was chosen', async () => {
    const { base, reads } = await begun(() => Promise.reject(new Error('no network')));
    base.show({ kind: 'plain' }, true);
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(reads).toEqual(['a']);
  });

  test('[M11] says what is wrong with a map that was reached', async () => {
    const { last } = await begun(() => Promise.reject(new UnusableBase('it is a song')));
    expect(last()).toMatchObject({ health: 'unreachable', reason: 'it is a song' });
  });

  test('[M12] tiles that are missing make no event: it looks by itself', async () => {
    const { base, last } = await begun();
    base.asked(source, tile(0));
    expect(last()?.health).toBe('waiting');
    await vi.advanceTimersByTimeAsync(1000);
    expect(last()?.health).toBe('empty');
  });

  test('[M12] the survey’s own sources are none of its business', async () => {
    const { base, told } = await begun();
    const before = told.length;
    expect(base.failed('ground-plan', null)).toBe(false);
    expect(base.failed(undefined, null)).toBe(false);
    base.came('ground-plan', tile(0));
    expect(told).toHaveLength(before);
  });
});

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { OverlaySources, type SourceData } from '../../src/map/overlay-sources';
import { overlay, point } from '../../src/map/overlays/features';

let frames = new Map<number, () => void>();
const frame = () => {
  const due = frames;
  frames = new Map();
  due.forEach((run) => run());
};
let asked = 0;

beforeEach(() => {
  frames = new Map();
  asked = 0;
  vi.stubGlobal('requestAnimationFrame', (run: () => void) => {
    frames.set(++asked, run);
    return asked;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => frames.delete(id));
});
afterEach(() => void vi.unstubAllGlobals());

/** Points on the equator, so many of them. */
const many = (count: number) => overlay(Array.from({ length: count }, (_, i) => point([i / 1000, 0], {})));

function written() {
  const log: [name: string, data: SourceData][] = [];
  const sources = new OverlaySources((name, data) => log.push([name, data]));
  return { sources, log, names: () => log.map(([name]) => name) };
}

test('[M30] before the map has its sources nothing is written, then all of it at once', () => {
  const { sources, names } = written();
  sources.set('ground', many(2000));
  sources.set('spots', many(2000));
  sources.set('land', '/land.json');
  frame();
  expect(names()).toEqual([]);
  sources.begin();
  expect(names()).toEqual(['ground', 'spots', 'land']);
});

test('[M31] a source is written at most once a frame, with what it was given last; the same again is no write', () => {
  const { sources, log } = written();
  sources.begin();
  const [first, last] = [many(1), many(2)];
  sources.set('spots', first);
  sources.set('spots', last);
  expect(log).toEqual([]);
  frame();
  expect(log).toEqual([['spots', last]]);
  sources.set('spots', last);
  frame();
  // Away and back within one frame.
  sources.set('spots', first);
  sources.set('spots', last);
  frame();
  expect(log).toHaveLength(1);
});

test('[M32] what does not fit in one frame waits for the next, in the order in which it came', () => {
  const { sources, names } = written();
  sources.begin();
  sources.set('ground', many(600));
  sources.set('use', many(600));
  sources.set('paths', many(1));
  frame();
  expect(names()).toEqual(['ground', 'use']);
  frame();
  expect(names()).toEqual(['ground', 'use', 'paths']);
});

test('[M33] once the map is gone nothing is written', () => {
  const { sources, log } = written();
  sources.begin();
  sources.set('spots', many(1));
  sources.remove();
  frame();
  expect(log).toEqual([]);
});

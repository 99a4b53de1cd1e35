import { describe, expect, test } from 'vitest';
import { otherPaths } from '../../src/figures/traffic/other-paths';
import type { OtherPaths } from '../../src/figures/traffic/paths';
import { OtherFlying } from '../../src/state/other-flying.svelte';
import { contentsOf, feature, plainSubject } from '../support/contents';

const a = [8.5, 47.4] as const;
const b = [8.52, 47.41] as const;
const subjects = [plainSubject];
const plain = contentsOf([], { subjects });
const show = contentsOf([feature('show', 'display-line', 'LineString', [a, b], { passes: ['level'] })], {
  subjects,
});

function started() {
  let asked = 0;
  let arrive: (build: OtherPaths) => void = () => {};
  const flying = new OtherFlying(() => {
    asked++;
    return new Promise((resolve) => (arrive = resolve));
  });
  const names = (contents: typeof show) =>
    flying.paths(contents, () => true, 400, null).map(({ ref }) => ref.path);
  return { names, asked: () => asked, arrive: () => arrive(otherPaths) };
}

describe('what else is flown, loaded when a survey has such', () => {
  test('[F1060] a survey without any of it asks for nothing', () => {
    const { names, asked } = started();
    expect(names(plain)).toEqual([]);
    expect(asked()).toBe(0);
  });

  test('[F1061] asked for once, nothing until it is there, and all of it then', async () => {
    const { names, asked, arrive } = started();
    expect(names(show)).toEqual([]);
    expect(names(show)).toEqual([]);
    expect(asked()).toBe(1);
    arrive();
    await Promise.resolve();
    expect(names(show)).toEqual(['show/level/forward', 'show/level/backward']);
  });

  test('[F1062] it arrives after another survey has been opened: that one is answered, the next one too', async () => {
    const { names, asked, arrive } = started();
    names(show);
    expect(names(plain)).toEqual([]);
    arrive();
    await Promise.resolve();
    expect(names(plain)).toEqual([]);
    expect(names(show)).toHaveLength(2);
    expect(asked()).toBe(1);
  });
});

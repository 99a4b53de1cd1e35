import { expect, test } from 'vitest';
import { siteFrame } from '../../../src/figures/sight/site-frame';
import { HorizonRays } from '../../../src/figures/sight/horizon-rays';
import { terrainIn } from '../../../src/figures/sight/terrain';
import { wavyGround } from '../../bench/built-up-survey';
import { seeded } from '../../support/tolerance';

const full = wavyGround();
/** With a hole in which nothing is known. */
const grid = {
  ...full,
  heights: full.heights.map((height, i) => (i % 700 > 340 && i % 700 < 352 ? NaN : height)),
};
const terrain = terrainIn(grid, siteFrame([-0.46, 51.4776]));

test('[F1114] nothing of the ground along a line is above its ceiling, and the ceiling is not far above it', () => {
  const random = seeded(930);
  let near = 0;
  for (let k = 0; k < 200; k++) {
    const [x, y, turn, long] = [
      4000 * random() - 2000,
      4000 * random() - 2000,
      6.3 * random(),
      400 * random(),
    ];
    const [dx, dy] = [long * Math.sin(turn), long * Math.cos(turn)];
    const ceiling = terrain.ceilingAlong(x, y, x + dx, y + dy);
    let highest = -Infinity;
    for (let share = 0; share <= 1; share += 0.01) {
      const height = terrain.heightAt(x + share * dx, y + share * dy);
      if (height > highest) highest = height;
    }
    expect(highest).toBeLessThanOrEqual(ceiling);
    if (ceiling - highest < 8) near++;
  }
  expect(near).toBeGreaterThan(150);
});

test('[F1115] whether the ground rises above a line, told by its highest points, is what a look at every step says', () => {
  const random = seeded(931);
  const [told, all] = [new HorizonRays(), new HorizonRays()];
  const counts = { clear: 0, above: 0 };
  for (let k = 0; k < 1200; k++) {
    const [x, y, turn] = [4000 * random() - 2000, 4000 * random() - 2000, 4 * random()];
    const eye = terrain.heightAt(x, y) + 1.7;
    if (Number.isNaN(eye)) continue;
    told.stand(terrain, x, y, eye, 6.8e-8);
    all.stand(terrain, x, y, eye, 6.8e-8);
    const distance = 3000 * random();
    const steepness = 0.1 * random() - 0.01;
    const first = all.firstAbove(turn, distance, steepness);
    counts[first === Infinity ? 'clear' : 'above']++;
    expect(told.rises(turn, distance, steepness)).toBe(first < Infinity);
  }
  expect(Math.min(counts.above, counts.clear)).toBeGreaterThan(100);
});

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

test('[F930] nothing of the ground along a line is above its ceiling, and the ceiling is not far above it', () => {
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

test('[F931] ground that stays below a line is never above it; most clear lines are told without a look at every step', () => {
  const random = seeded(931);
  const [told, all] = [new HorizonRays(), new HorizonRays()];
  const counts = { below: 0, clear: 0, above: 0 };
  for (let k = 0; k < 300; k++) {
    const [x, y, turn] = [4000 * random() - 2000, 4000 * random() - 2000, 4 * random()];
    const eye = terrain.heightAt(x, y) + 1.7;
    if (Number.isNaN(eye)) continue;
    told.stand(terrain, x, y, eye, 6.8e-8);
    all.stand(terrain, x, y, eye, 6.8e-8);
    const distance = 3000 * random();
    const steepness = 0.15 * random() - 0.01;
    const isClear = all.firstAbove(turn, distance, steepness) === Infinity;
    if (told.staysBelow(turn, distance, steepness)) {
      counts.below++;
      expect(isClear).toBe(true);
    }
    counts[isClear ? 'clear' : 'above']++;
  }
  expect(counts.above).toBeGreaterThan(20);
  expect(counts.below).toBeGreaterThan(0.6 * counts.clear);
});

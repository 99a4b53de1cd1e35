import { expect, test } from 'vitest';
import type { LightRun } from '../../../src/figures/when/light-row';
import { printedChanges } from '../../../src/ui/over-time/printed-changes';

const run = (from: number, to: number, light: LightRun['light'], more: Partial<LightRun> = {}): LightRun => ({
  from,
  to,
  light,
  glare: false,
  flat: false,
  worth: 'good',
  blocked: false,
  ...more,
});
/** A winter's day of 288 steps: dark, twilight, side light, front light, back light with and without glare, dark. */
const runs = [
  run(0, 90, 'dark'),
  run(90, 97, 'civil-twilight'),
  run(97, 110, 'side-lit'),
  run(110, 150, 'front-lit'),
  run(150, 170, 'back-lit', { glare: true }),
  run(170, 180, 'back-lit'),
  run(180, 288, 'dark'),
];
const printed = (px: number) => printedChanges(runs, (at) => at * px, 288 * px);

test('[U430] each change of light has its time where there is room; glare that comes and goes is none', () => {
  expect(printed(10)).toEqual([90, 97, 110, 150, 180]);
});

test('[U431] with little room those about front light come first, and no two lie over one another', () => {
  expect(printed(2)).toEqual([90, 110, 150, 180]);
  const narrow = printed(0.8);
  expect(narrow).toContain(110);
  narrow.forEach((at, i) => {
    if (i > 0) expect((at - (narrow[i - 1] as number)) * 0.8).toBeGreaterThanOrEqual(40);
  });
});

test('[U432] what is hidden is a change, and its front light is none to wait for', () => {
  const hidden = [
    run(0, 100, 'front-lit', { blocked: true }),
    run(100, 103, 'front-lit'),
    run(103, 288, 'side-lit'),
  ];
  expect(printedChanges(hidden, (at) => at, 288)).toEqual([100]);
});

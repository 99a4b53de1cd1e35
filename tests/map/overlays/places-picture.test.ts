import { expect, test } from 'vitest';
import { closedGround, minuteSteps } from '../../../styles/ramps';
import { picturing } from '../../../src/map/overlays/places-picture';
import { placeLegend } from '../../../src/ui/words/place-words';
import type { DrawnCells } from '../../../src/state/drawn-places.svelte';

const count = 16;
const corners = [
  [0, 1],
  [1, 1],
  [1, 0],
  [0, 0],
] as const;

/** Drawn in one go. */
function placesPicture(drawn: DrawnCells, isDark = false) {
  const steps = picturing(drawn, isDark);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
const cells = (): DrawnCells & { values: Float64Array; closed: Uint8Array; stride: Uint8Array } => ({
  layer: 'minutes',
  count,
  values: new Float64Array(count * count).fill(NaN),
  closed: new Uint8Array(count * count),
  stride: new Uint8Array(count * count),
  usableTo: 400,
  corners,
});
/** "#rrggbb" at the middle of a cell, counted from the south-west; null where nothing is drawn. */
function at(drawn: DrawnCells, column: number, row: number, isDark = false): string | null {
  const { pixels, size } = placesPicture(drawn, isDark);
  const scale = size / count;
  const i = 4 * ((size - 1 - Math.floor((row + 0.5) * scale)) * size + Math.floor((column + 0.5) * scale));
  const [r, g, b, a] = pixels.subarray(i, i + 4);
  const hex = (n = 0) => n.toString(16).padStart(2, '0');
  return a === 0 ? null : `#${hex(r)}${hex(g)}${hex(b)}`;
}

test('[P10] a coarse cell stands for its square until a finer one lies over it', () => {
  const drawn = cells();
  // The middle of a square of 8 to the south-west, and a finer cell in its corner.
  drawn.stride[4 * count + 4] = 8;
  drawn.values[4 * count + 4] = 400;
  expect([at(drawn, 0, 0), at(drawn, 7, 7), at(drawn, 8, 8)]).toEqual([
    minuteSteps[4].colour,
    minuteSteps[4].colour,
    null,
  ]);
  drawn.stride[0] = 1;
  drawn.values[0] = 15;
  expect([at(drawn, 0, 0), at(drawn, 1, 0)]).toEqual([minuteSteps[0].colour, minuteSteps[4].colour]);
});

test('[P11] rows go from the south to the north of the picture; nothing good draws nothing', () => {
  const drawn = cells();
  drawn.stride.fill(1);
  drawn.values[15 * count] = 100;
  expect([at(drawn, 0, 15), at(drawn, 0, 0), at(drawn, 15, 15)]).toEqual([minuteSteps[2].colour, null, null]);
});

test('[P12] closed ground is hatched, however good it would be', () => {
  const drawn = cells();
  drawn.stride.fill(1);
  drawn.values.fill(500);
  drawn.closed.fill(1);
  const { pixels } = placesPicture(drawn);
  const seen = new Set(new Uint32Array(pixels.buffer));
  expect(seen.size).toBe(2);
  expect([...seen].some((c) => (c & 0xff) === parseInt(closedGround.line.slice(1, 3), 16))).toBe(true);
});

test('[P13] on a dark map the most minutes are the palest, and the legend says the same; light and millimetres stay', () => {
  const drawn = cells();
  drawn.stride.fill(1);
  drawn.values.fill(400);
  expect([at(drawn, 3, 3), at(drawn, 3, 3, true)]).toEqual([minuteSteps[4].colour, minuteSteps[0].colour]);
  const over = (isDark: boolean) =>
    placeLegend('minutes', 400, isDark).find(({ words }) => words === 'over 6 h');
  expect([over(false)?.colour, over(true)?.colour]).toEqual([minuteSteps[4].colour, minuteSteps[0].colour]);
  expect(placeLegend('light-a', 400, true)).toEqual(placeLegend('light-a', 400));
  expect(placeLegend('focal', 400, true)).toEqual(placeLegend('focal', 400));
});

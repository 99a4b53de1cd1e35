import { expect, test } from 'vitest';
import { steepened } from '../../src/map/steepened';

/** A slope to the east of so many m to a cell of about 111 m. */
const slope = (rise: number, more: (i: number) => number = () => 0) => ({
  columns: 101,
  rows: 101,
  west: 0,
  north: 0.05,
  stepLng: 0.001,
  stepLat: 0.001,
  heights: Float32Array.from({ length: 101 * 101 }, (_, i) => 500 + rise * ((i % 101) - 50) + more(i)),
});
const row = 50 * 101;
const riseInTheMiddle = ({ heights }: { heights: Float32Array }) =>
  (heights[row + 51] as number) - (heights[row + 50] as number);

test('gentle ground is shaded steeper, at most eight times; mountains as they are', () => {
  expect(riseInTheMiddle(steepened(slope(5.566)))).toBeCloseTo(27.83, 1);
  expect(riseInTheMiddle(steepened(slope(0.5)))).toBeCloseTo(4, 2);
  expect(riseInTheMiddle(steepened(slope(60)))).toBeCloseTo(60, 2);
});

test('level ground stays level, unknown ground unknown, and the edge comes level', () => {
  const flat = steepened(slope(0));
  expect(new Set(flat.heights)).toEqual(new Set([500]));
  expect(steepened(slope(2, (i) => (i === row ? NaN : 0))).heights[row]).toBeNaN();
  const { heights } = steepened(slope(2));
  expect(Math.abs((heights[row] as number) - (heights[row + 100] as number))).toBeLessThan(0.1);
});

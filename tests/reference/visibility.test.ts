import { describe, expect, test } from 'vitest';
import { mistFactor } from '../../src/figures/light/sky';

/**
 * WMO-No. 8, Guide to Instruments and Methods of Observation, volume I, chapter 9 (measurement of visibility): the
 * meteorological optical range P is the path over which a light beam is left with 0.05 of its flux, and so a black
 * object against the sky with 5 % of its contrast (Koschmieder): C(x) = exp(-s x), P = ln(1 / 0.05) / s, about 3 / s.
 * Quoted from memory of the guide; the rows are worked by hand from those two equations.
 */
const rows: readonly (readonly [extinctionPerKm: number, rangeM: number])[] = [
  [0.5, 5991],
  [1, 2996],
  [2, 1498],
  [6, 499],
];

/** What is left at the 10 km that a clear day is taken to have, by the same law: the program counts from there. */
const clearDay = (x: number) => Math.pow(0.05, x / 10_000);

describe('[R110] contrast through mist against the optical range of WMO-No. 8', () => {
  test.each(rows)(
    'extinction %f per km is a range of %i m, at which 5 %% of the contrast is left',
    (s, range) => {
      expect(Math.log(1 / 0.05) / (s / 1000)).toBeCloseTo(range, -1);
      const left = mistFactor(range, { direct: 1, visibility: range }) * clearDay(range);
      expect(Math.abs(left / 0.05 - 1)).toBeLessThan(0.005);
    },
  );

  test.each(rows)('extinction %f per km: half the contrast at 0.231 of the range', (s, range) => {
    // ln 2 / ln 20 = 0.2314: half the contrast is gone long before the range.
    const x = (Math.log(2) / s) * 1000;
    expect(x / range).toBeCloseTo(0.2314, 3);
    const left = mistFactor(x, { direct: 1, visibility: range }) * clearDay(x);
    expect(Math.abs(left / 0.5 - 1)).toBeLessThan(0.002);
  });
});

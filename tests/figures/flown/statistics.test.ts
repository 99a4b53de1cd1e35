import { describe, expect, it } from 'vitest';
import { percentile, spreadOf } from '../../../src/figures/flown/percentile';
import { theilSen } from '../../../src/figures/flown/theil-sen';

describe('[L1] percentiles by linear interpolation', () => {
  // Hyndman and Fan 1996, definition 7, by hand: p at (n - 1) p + 1 of the ordered values.
  it.each([
    [[1, 2, 3, 4], 0.25, 1.75],
    [[1, 2, 3, 4], 0.5, 2.5],
    [[15, 20, 35, 40, 50], 0.4, 29],
    [[2, 4, 8], 0.1, 2.4],
    [[7], 0.9, 7],
  ])('%j at %d is %d', (values, share, expected) => {
    expect(percentile(values, share)).toBeCloseTo(expected, 12);
  });

  it('orders the values itself for a spread, and has none for nothing', () => {
    expect(spreadOf([40, 15, 50, 20, 35])).toEqual({ median: 35, low: 20, high: 40 });
    expect(spreadOf([])).toBeNull();
  });
});

describe('[L2] the Theil-Sen line', () => {
  it('has the slope of the worked example of Sen 1968, section 6: 4, the 11th of 21 slopes', () => {
    // t and X of the example, as reprinted in Hollander and Wolfe, "Nonparametric Statistical Methods" (from memory).
    const t = [1, 2, 3, 4, 10, 12, 18];
    const x = [9, 15, 19, 20, 45, 55, 78];
    expect(theilSen(t, x)?.slope).toBeCloseTo(4, 12);
  });

  it('is the straight line that the points lie on, wherever they begin', () => {
    const line = theilSen([500, 700, 1500, 4000], [31, 39, 71, 171]);
    expect(line?.slope).toBeCloseTo(0.04, 12);
    expect(line?.intercept).toBeCloseTo(11, 9);
  });

  it('is not moved by a quarter of wild points', () => {
    const x = Array.from({ length: 40 }, (_, i) => i * 70);
    const y = x.map((v, i) => (i % 4 === 1 ? 9999 : 12 + 0.05 * v));
    expect(theilSen(x, y)?.slope).toBeCloseTo(0.05, 3);
  });

  it('is none through one point, or through points above each other', () => {
    expect(theilSen([1], [2])).toBeNull();
    expect(theilSen([3, 3], [1, 2])).toBeNull();
  });
});

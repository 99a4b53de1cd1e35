import { describe, expect, it } from 'vitest';
import { reachOf, ridingMinutes } from '../../../src/figures/plan/way-from';

describe('[F750] a way of which only the straight line is known', () => {
  it('is longer than the line: 20 km by bicycle at 18 km/h are 87 minutes, not 67', () => {
    expect(ridingMinutes(20_000, 5)).toBeCloseTo((20 * 1.3 * 60) / 18, 6);
  });
  it('is the same both ways round', () => {
    expect(ridingMinutes(reachOf(45, 7), 7)).toBeCloseTo(45, 9);
  });
});

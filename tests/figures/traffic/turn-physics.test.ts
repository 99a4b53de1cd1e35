import { describe, expect, test } from 'vitest';
import { bankOf, turnRadius } from '../../../src/figures/traffic/turn-physics';

const foot = 0.3048;
const knot = 1852 / 3600;

describe('turns', () => {
  /*
   * Worked radii: FAA-H-8083-25 chapter 5, "Radius of Turn" (120 and 240 kt at 30 degrees; from memory, its constant is
   * 11.26); aviation formulary (100 kt at 45 degrees, 891 ft; read); an ATPL question (120 kt at 60 degrees, 220 m with
   * g = 10; read). Their rounded constants cost up to 0.7 %, g = 10 two.
   */
  test.each([
    [120, 30, 2215 * foot, 0.005],
    [240, 30, 8861 * foot, 0.005],
    [100, 45, 891 * foot, 0.007],
    [120, 60, 220, 0.021],
  ])('[F1000] %s kt at %s degrees of bank turn within %f m', (knots, bank, radius, tolerance) => {
    const ours = turnRadius(knots * knot, bank);
    expect(Math.abs(ours / radius - 1)).toBeLessThan(tolerance);
  });

  test('[F1001] the bank of a turn is the bank that makes its radius; straight on there is none', () => {
    for (const bank of [5, 25, 60, 75]) expect(bankOf(83, turnRadius(83, bank))).toBeCloseTo(bank, 9);
    expect(bankOf(83, Infinity)).toBe(0);
  });
});

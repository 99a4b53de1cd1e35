import { describe, expect, it } from 'vitest';
import { feetToMetres, metresToFeet } from '../../src/units/length';

describe('lengths', () => {
  it('turns feet into metres by the exact international foot', () => {
    expect(feetToMetres(50)).toBeCloseTo(15.24, 12);
    expect(feetToMetres(-1246)).toBeCloseTo(-379.7808, 10);
  });

  it('goes back whole', () => {
    for (const ft of [0, 1, 237, 13_314]) expect(Math.round(metresToFeet(feetToMetres(ft)))).toBe(ft);
  });
});

import { expect, it } from 'vitest';
import { knotsToMetresPerSecond, metresPerSecondToKnots } from '../../src/units/speed';

it('140 kt are 72.02 m/s, and back', () => {
  expect(knotsToMetresPerSecond(140)).toBeCloseTo(72.0222, 4);
  expect(metresPerSecondToKnots(knotsToMetresPerSecond(37))).toBeCloseTo(37, 12);
});

import { expect, test } from 'vitest';
import { acosAtLeastDeg, acosDeg, acosShort } from '../../../src/figures/geometry/angles';

test('[F975] the quick arc cosine is never above the true one, and short of it by no more than it says', () => {
  const cosines = Array.from({ length: 400_001 }, (_, i) => -1 + i / 200_000);
  // What rounding pushes past one, and the steep ends.
  cosines.push(1 + 1e-15, -1 - 1e-15, 1 - 1e-12, -1 + 1e-12, 0, -0);
  const short = cosines.map((cosine) => acosDeg(cosine) - acosAtLeastDeg(cosine));
  expect(short.reduce((least, s) => Math.min(least, s), Infinity)).toBeGreaterThanOrEqual(0);
  expect(short.reduce((most, s) => Math.max(most, s), 0)).toBeLessThanOrEqual(acosShort);
});

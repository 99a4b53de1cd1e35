import { expect, test } from 'vitest';
import { acosDeg, RAD } from '../../../src/figures/geometry/angles';
import { angleOfClass, lightClass } from '../../../src/figures/light/light-class';

test('[F1353] the class told from a cosine is that of its angle, at the borders to the last digit', () => {
  const cosines = [-1, 1, NaN];
  for (let angle = 0; angle <= 180; angle += 0.05) cosines.push(Math.cos(angle * RAD));
  // Both borders of the classes, and steps on either side of them down to a rounding.
  for (const border of [60, 110])
    for (let step = 1; step > 1e-17; step /= 3)
      for (const side of [-step, 0, step]) cosines.push(Math.cos(border * RAD) + side);
  let atBorders = 0;
  for (const cosine of cosines)
    for (const flank of [true, false, null]) {
      const angle = acosDeg(cosine);
      const told = angleOfClass(cosine);
      if (told === angle) atBorders++;
      expect(lightClass(20, told, flank), String(cosine)).toBe(lightClass(20, angle, flank));
    }
  expect(atBorders).toBeGreaterThan(50);
});

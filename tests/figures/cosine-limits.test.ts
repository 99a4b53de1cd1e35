import { expect, test } from 'vitest';
import { RAD } from '../../src/figures/geometry/angles';
import { angleFactor, angleLeaving } from '../../src/figures/score';
import { cosineLimit } from '../../src/figures/cosine-limits';

test('[F1201] an angle whose cosine is below the limit of a factor leaves less than that factor; the limit is close', () => {
  const passedOver: [angle: number, factor: number][] = [];
  for (let k = 0; k <= 5000; k++) {
    const factor = k / 5000;
    for (let angle = 0; angle <= 180; angle += 1)
      if (Math.cos(angle * RAD) < cosineLimit(factor)) passedOver.push([angle, factor]);
    if (factor < 0.2) continue;
    expect(angleFactor(angleLeaving(factor))).toBeCloseTo(factor, 12);
    const limited = Math.acos(Math.min(1, Math.max(-1, cosineLimit(factor)))) / RAD;
    expect(factor - angleFactor(limited)).toBeLessThan(0.002);
  }
  expect(passedOver.length).toBeGreaterThan(100_000);
  expect(passedOver.filter(([angle, factor]) => angleFactor(angle) >= factor)).toEqual([]);
});

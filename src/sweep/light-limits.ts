import { RAD } from '../figures/geometry/angles';
import type { SkyThere } from '../figures/light/sky';
import { lightCeiling, lightFactor } from '../figures/score';

/** Steps of the light that is needed, 0 to 1. */
export const limitSteps = 64;
/** Degrees by which the sun's altitude may differ over the neighbourhood: 12 km are 0.11 degrees. */
const spread = 0.15;
/** What rounding may add. */
const slack = 1e-9;
/** Limits that every cosine is above, and none, even with what a piece may add to it. */
const always = -2;
const never = 9;

/**
 * For one sun and sky, `flankLit` false for a flank that is certainly dark: below which cosine of its angle the light factor certainly does not reach a share of its ceiling, by
 * steps of that share. Without one arc cosine nine samples in ten are passed over. The light only falls with the angle
 * (test S131); where the altitude's own spread makes a difference, the limits are those of the kindest altitude.
 */
export function lightLimits(altitude: number, sky: SkyThere, flankLit: false | null = null): Float64Array {
  const limits = new Float64Array(limitSteps + 1);
  for (let step = 0; step <= limitSteps; step++) {
    const share = step / limitSteps;
    let widest = -1;
    for (const a of [altitude - spread, altitude, altitude + spread]) {
      const ceiling = lightCeiling(a, sky);
      if (ceiling === 0) continue;
      const reached = (angle: number) =>
        lightFactor(a, angle, flankLit, sky) >= share * ceiling * (1 - slack);
      if (reached(0)) widest = Math.max(widest, reached(180) ? 180 : lastAngle(reached));
    }
    limits[step] = widest < 0 ? never : widest >= 180 ? always : Math.cos(widest * RAD) - 1e-6;
  }
  return limits;
}

function lastAngle(reached: (angle: number) => boolean): number {
  let [low, high] = [0, 180];
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (reached(middle)) low = middle;
    else high = middle;
  }
  return high;
}

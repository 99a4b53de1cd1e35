import { RAD } from '../../figures/geometry/angles';
import type { SkyThere } from '../../figures/light/sky';
import { lightCeiling, lightFactor } from '../../figures/score';

/** Steps of the light that is needed, 0 to 1. */
export const limitSteps = 64;
/** Degrees by which the sun's altitude may differ over the neighbourhood: 12 km are 0.11 degrees. */
const spread = 0.15;
/** Degrees from angle to angle that is tried; a whole number of them makes 180. */
const grain = 0.25;
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
  const limits = new Float64Array(limitSteps + 1).fill(never);
  for (const a of [altitude - spread, altitude, altitude + spread]) {
    const ceiling = lightCeiling(a, sky);
    if (ceiling === 0) continue;
    // The more light is needed the smaller the angle: from step to step it only narrows.
    let widest = 180;
    for (let step = 0; step <= limitSteps; step++) {
      const needed = (step / limitSteps) * ceiling * (1 - slack);
      while (widest >= 0 && !(lightFactor(a, widest, flankLit, sky) >= needed)) widest -= grain;
      if (widest < 0) break;
      // It may still be reached up to the next angle that was not.
      const limit = widest >= 180 ? always : Math.cos((widest + grain) * RAD) - 1e-6;
      if (limit < (limits[step] as number)) limits[step] = limit;
    }
  }
  return limits;
}

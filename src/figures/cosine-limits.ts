import { RAD } from './geometry/angles';
import type { SkyThere } from './light/sky';
import { darkFlankFactor } from './practice';
import { angleLeaving, darkCeiling, lightCeiling } from './score';

const steps = 1024;
/** What rounding may take from a cosine, and add to a bound. */
const rounding = 1e-9;

const limits = Float64Array.from(
  { length: steps + 1 },
  (_, k) => Math.cos(angleLeaving(k / steps) * RAD) - rounding,
);

/**
 * The least cosine of the angle of the light that can leave a factor (`angleFactor`), 0 to 1: at most two thousandths of the factor
 * below the true one, and never above it. So most samples need no angle.
 */
export const cosineLimit = (factor: number): number => limits[(factor * steps) | 0] as number;

/**
 * The light factor under one sun and sky as a straight line of `angleFactor`: what is there at any angle, and what the angle adds
 * at most. What cloud gives is there at any angle, as all is before sunrise. Both a rounding more than they are.
 */
export interface LightByAngle {
  readonly always: number;
  readonly byAngle: number;
}

export function lightByAngle(sunAltitude: number, sky: SkyThere): LightByAngle {
  const ceiling = lightCeiling(sunAltitude, sky);
  const byAngle = ((ceiling - darkCeiling(sunAltitude, sky)) / (1 - darkFlankFactor)) * (1 + rounding);
  return { always: ceiling * (1 + rounding) - byAngle, byAngle };
}

/** What the angle of the light must leave (`angleFactor`) for a total, where the other factors leave `room`: above 1 where none can. */
export const neededFactor = (total: number, room: number, always: number, byAngle: number): number =>
  ((total / room - always) / byAngle) * (1 - rounding);

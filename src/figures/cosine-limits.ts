import { RAD } from './geometry/angles';
import { darkFlankFactor } from './practice';
import { angleLeaving } from './score';

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
 * The light factor under one sun and sky is a straight line of `angleFactor`: what is there at any angle (what cloud gives; all of
 * it before sunrise), and what the angle adds. `ceiling` and `darkest`: its most, and its most with the flank dark. Angle factor
 * for each unit of what the angle adds, so that nobody has to divide; infinite where it adds nothing. A rounding less than it is.
 */
export const perAdded = (ceiling: number, darkest: number): number =>
  ((1 - rounding) * (1 - darkFlankFactor)) / ((ceiling - darkest) * (1 + rounding));

/** What is there at any angle, a rounding more than it is. */
export const atAnyAngle = (ceiling: number, darkest: number): number =>
  (1 + rounding) * (ceiling - (ceiling - darkest) / (1 - darkFlankFactor));

/** What the angle of the light must leave (`angleFactor`) for a total, where the other factors leave `room`: above 1 where none can. */
export const neededFactor = (total: number, room: number, always: number, per: number): number =>
  (total / room - always) * per;

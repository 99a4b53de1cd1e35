import { RAD } from '../geometry/angles';
import { angleLeaving } from '../score';

const steps = 1024;
/** What rounding may take from a cosine. */
const rounding = 1e-9;

const limits = Float64Array.from(
  { length: steps + 1 },
  (_, k) => Math.cos(angleLeaving(k / steps) * RAD) - rounding,
);

/**
 * The least cosine of the angle of the light that can leave a factor (`angleFactor`), 0 to 1: at most two thousandths of the factor
 * below the true one, and never above it. So most samples of a year need no angle.
 */
export const cosineLimit = (factor: number): number => limits[(factor * steps) | 0] as number;

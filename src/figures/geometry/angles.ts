import { DEG } from '../../survey/angles';

export { angleBetween, DEG, RAD, wrap180, wrap360 } from '../../survey/angles';

/** Arc cosine in degrees of a value that rounding may have pushed past +-1. */
export function acosDeg(cosine: number): number {
  return Math.acos(Math.max(-1, Math.min(1, cosine))) * DEG;
}

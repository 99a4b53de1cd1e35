export { angleBetween, wrap180, wrap360 } from '../../survey/angles';

/** Degrees to radians. */
export const RAD = Math.PI / 180;
/** Radians to degrees. */
export const DEG = 180 / Math.PI;

/** Arc cosine in degrees of a value that rounding may have pushed past +-1. */
export function acosDeg(cosine: number): number {
  return Math.acos(Math.max(-1, Math.min(1, cosine))) * DEG;
}

/** Degrees to radians. */
export const RAD = Math.PI / 180;
/** Radians to degrees. */
export const DEG = 180 / Math.PI;

/** Any angle in degrees brought into [0, 360). */
export function wrap360(deg: number): number {
  const wrapped = ((deg % 360) + 360) % 360;
  return wrapped === 360 ? 0 : wrapped;
}

/** Any angle in degrees brought into [-180, 180). */
export function wrap180(deg: number): number {
  return wrap360(deg + 180) - 180;
}

/** Smallest angle between two directions in degrees, 0 to 180. */
export function angleBetween(a: number, b: number): number {
  return Math.abs(wrap180(a - b));
}

/** Arc cosine in degrees of a value that rounding may have pushed past +-1. */
export function acosDeg(cosine: number): number {
  return Math.acos(Math.max(-1, Math.min(1, cosine))) * DEG;
}

/** Degrees that `acosAtLeastDeg` may lie below the arc cosine, 6.8e-5 radians twice over. */
export const acosShort = 0.008;

/**
 * Degrees that the arc cosine is not below, and not above by more than `acosShort`: at a fifth of its cost, for what asks
 * whether it needs the arc cosine at all (Abramowitz and Stegun, 4.4.45: an error of at most 6.7e-5 radians).
 */
export function acosAtLeastDeg(cosine: number): number {
  const x = cosine < 0 ? -cosine : cosine;
  const root = x < 1 ? Math.sqrt(1 - x) : 0;
  const sharp = root * (1.5707288 + x * (-0.2121144 + x * (0.074261 - 0.0187293 * x)));
  return (cosine < 0 ? Math.PI - sharp : sharp) * DEG - acosShort / 2;
}

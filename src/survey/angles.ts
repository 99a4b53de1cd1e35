/** Degrees to radians. The one conversion of the house: every room may import it. */
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

import { along, dot, lengthOf, scaled, type Vec3 } from '../geometry/earth';

/**
 * The way in which the lit limb of the moon is turned: the unit vector square to the direction of the moon that points
 * along the shortest way over the sky to the sun. Both are directions of unit length in one set of axes, whichever;
 * null where they fall together or stand opposite, where nothing or all of the disc is lit. Exact; Meeus, Astronomical
 * Algorithms, chapter 48, has the same as an angle (48.5).
 */
export function brightLimb(moon: Vec3, sun: Vec3): Vec3 | null {
  const across = along(sun, moon, -dot(sun, moon));
  const size = lengthOf(across);
  return size > 1e-6 ? scaled(across, 1 / size) : null;
}

/**
 * The unit vector from the moon towards where its light comes from, so that exactly the share `lit` of its disc (0 to 1)
 * is seen lit, on the side of the sun. The cosine of the phase angle is twice that share less one (Meeus 48.1).
 */
export function moonlightFrom(moon: Vec3, sun: Vec3, lit: number): Vec3 {
  const towardsEye = scaled(moon, -1);
  const limb = brightLimb(moon, sun);
  if (!limb) return lit > 0.5 ? towardsEye : moon;
  const cosine = 2 * lit - 1;
  return along(scaled(towardsEye, cosine), limb, Math.sqrt(Math.max(0, 1 - cosine * cosine)));
}

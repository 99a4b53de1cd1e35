import { RAD } from '../geometry/angles';
import type { Vec3 } from '../geometry/earth';

/** The unit vector, to the east, north and up, of an azimuth from true north and an altitude in degrees. */
export function directionOf(azimuth: number, altitude: number): Vec3 {
  const level = Math.cos(altitude * RAD);
  return [Math.sin(azimuth * RAD) * level, Math.cos(azimuth * RAD) * level, Math.sin(altitude * RAD)];
}

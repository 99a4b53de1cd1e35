import { DEG, RAD, wrap360 } from '../geometry/angles';

/** A device's turns in degrees: about the vertical, its short and its long axis (W3C Device Orientation, "absolute"). */
export interface DeviceTurns {
  readonly alpha: number;
  readonly beta: number;
  readonly gamma: number;
}

/** Of the rotation matrix, from which a device counts as held up rather than lying: half a right angle. CP. */
const lyingFrom = Math.SQRT1_2;

/**
 * Which way a device points, degrees from the north of its own compass, clockwise: where its top edge points while it
 * lies flat, where the camera at its back looks while it is held up. `screen`: degrees by which the page is turned.
 * Rotation matrix and heading as worked out in W3C Device Orientation, appendix "compass heading".
 */
export function compassHeading({ alpha, beta, gamma }: DeviceTurns, screen = 0): number {
  const [sX, cX] = [Math.sin(beta * RAD), Math.cos(beta * RAD)];
  const [sY, cY] = [Math.sin(gamma * RAD), Math.cos(gamma * RAD)];
  const [sZ, cZ] = [Math.sin(alpha * RAD), Math.cos(alpha * RAD)];
  const isLying = Math.abs(cX * cY) > lyingFrom;
  // The top edge is the device's y axis; the camera at its back looks against its z axis.
  const east = isLying ? -cX * sZ : -cZ * sY - sZ * sX * cY;
  const north = isLying ? cX * cZ : -sZ * sY + cZ * sX * cY;
  return wrap360(Math.atan2(east, north) * DEG + (isLying ? screen : 0));
}

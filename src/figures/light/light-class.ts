import { acosDeg, RAD } from '../geometry/angles';
import { frontLitTo, sideLitTo, topLitFrom } from '../practice';
import type { LightClass } from '../types';
import { civilTwilightAltitude, sunriseAltitude } from './sun';

/**
 * The light on a subject, first match. `sunAltitude`: geometric, degrees. `angle`: the light angle, or the phase
 * angle where one looks at the underside. `flankLit`: null when no flank is seen.
 */
export function lightClass(sunAltitude: number, angle: number, flankLit: boolean | null): LightClass {
  if (sunAltitude < civilTwilightAltitude) return 'dark';
  if (sunAltitude < sunriseAltitude) return 'civil-twilight';
  if (sunAltitude >= topLitFrom) return 'top-lit';
  if (angle <= frontLitTo && flankLit !== false) return 'front-lit';
  return angle <= sideLitTo ? 'side-lit' : 'back-lit';
}

const [cosFront, cosSide] = [Math.cos(frontLitTo * RAD), Math.cos(sideLitTo * RAD)];
/** Of a cosine: nearer to a border than this the angle itself decides. */
const near = 1e-9;

/** From the cosine of an angle one in degrees of the same class: the angle itself at a border, else no arc cosine is worked out. */
export function angleOfClass(cosine: number): number {
  if (cosine > cosFront + near) return 0;
  if (cosine < cosSide - near) return 180;
  return cosine < cosFront - near && cosine > cosSide + near ? sideLitTo : acosDeg(cosine);
}

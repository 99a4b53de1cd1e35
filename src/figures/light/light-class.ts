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

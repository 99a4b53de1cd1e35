import type { Position } from '../../survey/document';
import { moonlightFrom } from '../light/bright-limb';
import { directionOf } from '../light/direction-of';
import { moonAt } from '../light/moon';
import type { EastNorthUp } from './from-eye';
import type { MoonInPicture } from './picture';

/** The moon from a place at an instant (ms since 1970, UTC), its lit limb towards the sun. */
export function moonInPicture(position: Position, instant: number, sun: EastNorthUp): MoonInPicture {
  const { azimuth, altitude, lit, phase } = moonAt(position, instant);
  const direction = directionOf(azimuth, altitude);
  return { direction, lightFrom: moonlightFrom(direction, sun, lit), lit, phase };
}

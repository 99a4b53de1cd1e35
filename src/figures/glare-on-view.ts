import { acosDeg, RAD } from './geometry/angles';
import { isFlat } from './light/sky';
import { sunriseAltitude } from './light/sun';
import type { SunThere } from './light/sun-there';
import { cosPhaseAt } from './light-on-view';
import { halfDiagonal, type Framing } from './optics/framing';
import { takenWith, type Reach } from './optics/reach';
import type { PathInView } from './path-in-view';
import { glareMargin } from './practice';

/** Whether the sun shines into the lens when its axis meets the aircraft at sample `i`: not when either is hidden, nor through cloud. */
export const glareAt = (
  view: PathInView,
  i: number,
  sun: SunThere,
  framing: Framing,
  reach: Reach,
): boolean =>
  !sun.hidden && !isFlat(sun.sky) && view.sightAt(i) > 0 && sunNearAt(view, i, sun, framing, reach);

/** Whether the sun is up and so near to the axis that it glares unless something hides it: reason enough for the caution. */
export const sunNearAt = (
  view: PathInView,
  i: number,
  sun: SunThere,
  framing: Framing,
  reach: Reach,
): boolean =>
  sun.sun.geometricAltitude > sunriseAltitude &&
  glaresInto(cosPhaseAt(view, i, sun), view.focalAt(i), sun, framing, reach);

const cosNoGlare = Math.cos((90 - glareMargin) * RAD);

/** The same from the cosine of the phase angle and the needed focal length in mm (NaN inside the aircraft). */
export function glaresInto(
  cosPhase: number,
  needed: number,
  { sun }: SunThere,
  framing: Framing,
  reach: Reach,
): boolean {
  // Half a frame is under 90 degrees: most samples need no more than this.
  if (sun.geometricAltitude <= sunriseAltitude || cosPhase >= cosNoGlare) return false;
  const fromAxis = 180 - acosDeg(cosPhase);
  // Not even at the shortest of the kit.
  if (fromAxis >= halfDiagonal(reach.shortest, framing) + glareMargin) return false;
  const focal = Number.isNaN(needed) ? reach.shortest : takenWith(reach, needed);
  return focal > 0 && fromAxis < halfDiagonal(focal, framing) + glareMargin;
}

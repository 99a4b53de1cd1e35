import { acosDeg, DEG, RAD } from './geometry/angles';
import { lightClass } from './light/light-class';
import { sunriseAltitude } from './light/sun';
import { halfDiagonal, type Framing } from './optics/framing';
import { farReach, reachFactor, takenWith, type Reach } from './optics/reach';
import { glareMargin, litFrom, noFlankWithin, undersideFrom } from './practice';
import { aspectFactor, hazeFactor, lightCeiling, lightFactor } from './score';
import type { LightClass, Sun } from './types';
import type { View } from './view';

/** The sun for one spot: degrees, and the direction to it in east, north and up at the eye. */
export interface SunThere {
  readonly sun: Sun;
  readonly east: number;
  readonly north: number;
  readonly up: number;
  /** Azimuth as a level unit vector. */
  readonly levelEast: number;
  readonly levelNorth: number;
  /** Whether an obstacle or the terrain stands before it. */
  readonly hidden: boolean;
}

/** Light comes from where the sun appears, so the direction is the refracted one. */
export function sunThere(sun: Sun, hidden = false): SunThere {
  const [sin, cos] = [Math.sin(sun.azimuth * RAD), Math.cos(sun.azimuth * RAD)];
  const level = Math.cos(sun.altitude * RAD);
  return {
    sun,
    east: sin * level,
    north: cos * level,
    up: Math.sin(sun.altitude * RAD),
    levelEast: sin,
    levelNorth: cos,
    hidden,
  };
}

/** Light angle in degrees at sample `i`: level angle at the aircraft between sun and eye; 0 where there is no level direction. */
export function lightAngleAt(view: View, i: number, sun: SunThere): number {
  const [e, n] = [view.east[i] as number, view.north[i] as number];
  const ground = Math.hypot(e, n);
  return ground > 0 ? acosDeg(-(e * sun.levelEast + n * sun.levelNorth) / ground) : 0;
}

/** Cosine of the phase angle at sample `i`: the same in three dimensions. */
export function cosPhaseAt(view: View, i: number, sun: SunThere): number {
  const [e, n, u] = [view.east[i] as number, view.north[i] as number, view.up[i] as number];
  return -(e * sun.east + n * sun.north + u * sun.up) / (view.range[i] as number);
}

/** Cosine of the aspect beyond which no flank is seen. */
export const cosNoFlank = Math.cos(noFlankWithin * RAD);

/** Whether the sun reaches the flank on the eye's side at sample `i`; null nose-on and tail-on. */
export function flankLitAt(view: View, i: number, sun: SunThere): boolean | null {
  // Written so that an unknown heading (NaN) has no flank either.
  if (!(Math.abs(view.cosAspectAt(i)) < cosNoFlank)) return null;
  const fromEye = view.leftwardsAt(i, view.east[i] as number, view.north[i] as number, view.up[i] as number);
  const toSun = view.leftwardsAt(i, sun.east, sun.north, sun.up);
  // The eye sees the left flank when the aircraft's left points back at it.
  return (fromEye < 0 ? toSun : -toSun) > litFrom;
}

/** Sine of the elevation above which one looks at the underside. */
export const sinUnderside = Math.sin(undersideFrom * RAD);

/** The angle in degrees by which the light is classed: in 3-D where one looks at the underside. */
export function classAngleAt(view: View, i: number, sun: SunThere): number {
  const fromBelow = (view.up[i] as number) > sinUnderside * (view.range[i] as number);
  return fromBelow ? acosDeg(cosPhaseAt(view, i, sun)) : lightAngleAt(view, i, sun);
}

export const lightClassAt = (view: View, i: number, sun: SunThere): LightClass =>
  lightClass(sun.sun.geometricAltitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun));

/** Aspect in degrees at sample `i`, 0 nose-on; null where the heading is not known. */
export function aspectAt(view: View, i: number): number | null {
  const cosine = view.cosAspectAt(i);
  return Number.isNaN(cosine) ? null : acosDeg(cosine);
}

/** Elevation in degrees of sample `i` above the horizontal at the eye. */
export const elevationAt = (view: View, i: number): number =>
  Math.asin(Math.max(-1, Math.min(1, (view.up[i] as number) / (view.range[i] as number)))) * DEG;

/** Whether the sun shines into the lens when its axis meets the aircraft at sample `i`: not when either is hidden. */
export const glareAt = (view: View, i: number, sun: SunThere, framing: Framing, reach: Reach): boolean =>
  !sun.hidden && view.sightAt(i) > 0 && sunNearAt(view, i, sun, framing, reach);

/** Whether the sun is up and so near to the axis that it glares unless something hides it: reason enough for the caution. */
export const sunNearAt = (view: View, i: number, sun: SunThere, framing: Framing, reach: Reach): boolean =>
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
  const focal = Number.isNaN(needed) ? reach.shortest : takenWith(reach, needed);
  return focal > 0 && fromAxis < halfDiagonal(focal, framing) + glareMargin;
}

/** The factors of a sample's score. */
export function scoreAt(view: View, i: number, sun: SunThere, reach: Reach) {
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun));
  const reached = reachOfSample(view, i, reach);
  const aspect = aspectFactor(aspectAt(view, i));
  const haze = hazeFactor(view.range[i] as number, altitude, elevationAt(view, i));
  const sight = view.sightAt(i);
  // An eye at the very centre of the aircraft has no angles: nothing that is out of reach needs them.
  const total = reached === 0 ? 0 : light * reached * aspect * sight * haze;
  return { total, light, reach: reached, aspect, sight, haze };
}

/**
 * The sample of the highest total; at equal totals (night) the least slant range. Never one that is hidden, as long as
 * anything of the path is in sight.
 */
export function bestIndex(view: View, sun: SunThere, reach: Reach): number {
  let best = closestInSight(view);
  if (view.sightAt(best) === 0) return best;
  const ceiling = lightCeiling(sun.sun.geometricAltitude);
  if (ceiling === 0) return best;
  let total = scoreAt(view, best, sun, reach).total;
  for (let i = 0; i < view.count; i++) {
    // No factor is above 1 and reach only falls beyond the longest lens: most samples need no framing at all.
    if (view.sightAt(i) === 0) continue;
    if (ceiling * farReach(reach, view.leastFocalAt(i)) < total) continue;
    if (ceiling * reachOfSample(view, i, reach) < total) continue;
    const score = scoreAt(view, i, sun, reach).total;
    if (score > total || (score === total && (view.range[i] as number) < (view.range[best] as number))) {
      total = score;
      best = i;
    }
  }
  return best;
}

const reachOfSample = (view: View, i: number, reach: Reach): number => {
  const needed = view.focalAt(i);
  return Number.isNaN(needed) ? 0 : reachFactor(reach, needed);
};

/** The sample nearest to the eye. */
export function closestIndex(view: View): number {
  let closest = 0;
  for (let i = 1; i < view.count; i++)
    if ((view.range[i] as number) < (view.range[closest] as number)) closest = i;
  return closest;
}

/** The same among those in sight; the nearest of all when nothing is. */
export function closestInSight(view: View): number {
  let closest = -1;
  for (let i = 0; i < view.count; i++)
    if (view.sightAt(i) > 0 && (closest < 0 || (view.range[i] as number) < (view.range[closest] as number)))
      closest = i;
  return closest < 0 ? closestIndex(view) : closest;
}

import { acosDeg, DEG, RAD } from './geometry/angles';
import { lightClass } from './light/light-class';
import type { SunThere } from './light/sun-there';
import type { PathInView } from './path-in-view';
import { litFrom, noFlankWithin, undersideFrom } from './practice';
import type { LightClass } from './types';

/** Light angle in degrees at sample `i`: level angle at the aircraft between sun and eye; 0 where there is no level direction. */
export const lightAngleAt = (view: PathInView, i: number, sun: SunThere): number =>
  acosDeg(cosLightAngleAt(view, i, sun));

function cosLightAngleAt(view: PathInView, i: number, sun: SunThere): number {
  const e = view.east[i] as number;
  const n = view.north[i] as number;
  const ground = Math.sqrt(e * e + n * n);
  return ground > 0 ? -(e * sun.levelEast + n * sun.levelNorth) / ground : 1;
}

/** Cosine of the phase angle at sample `i`: the same in three dimensions; 1 where the eye is at the aircraft's centre. */
export function cosPhaseAt(view: PathInView, i: number, sun: SunThere): number {
  const e = view.east[i] as number;
  const n = view.north[i] as number;
  const u = view.up[i] as number;
  const range = view.range[i] as number;
  return range > 0 ? -(e * sun.east + n * sun.north + u * sun.up) / range : 1;
}

const cosNoFlank = Math.cos(noFlankWithin * RAD);
const sinNoFlank = Math.sin(noFlankWithin * RAD);

/**
 * Whether a flank of the aircraft is seen at sample `i`: not within 10 degrees of nose-on or tail-on, neither in three
 * dimensions nor on the ground, where under a steep path a step aside would turn one flank into the other. Within 10
 * degrees of straight overhead the ground tells no direction: one sees the belly, and of what is banked its top or underside.
 */
export function hasFlankAt(view: PathInView, i: number): boolean {
  // Written so that an unknown heading (NaN) has no flank either.
  if (!(Math.abs(view.cosAspectAt(i)) < cosNoFlank)) return false;
  const e = view.east[i] as number;
  const n = view.north[i] as number;
  const across = Math.abs(view.leftwardsAt(i, e, n, view.up[i] as number));
  const range = view.range[i] as number;
  const ground = Math.sqrt(e * e + n * n);
  return across > sinNoFlank * (ground < sinNoFlank * range ? range : ground);
}

/** Whether the sun reaches the flank on the eye's side at sample `i`; null where none is seen. */
export function flankLitAt(view: PathInView, i: number, sun: SunThere): boolean | null {
  if (!hasFlankAt(view, i)) return null;
  const fromEye = view.leftwardsAt(i, view.east[i] as number, view.north[i] as number, view.up[i] as number);
  const toSun = view.leftwardsAt(i, sun.east, sun.north, sun.up);
  // The eye sees the left flank when the aircraft's left points back at it.
  return (fromEye < 0 ? toSun : -toSun) > litFrom;
}

/** Sine of the elevation above which one looks at the underside. */
export const sinUnderside = Math.sin(undersideFrom * RAD);

/** The angle in degrees by which the light is classed: in 3-D where one looks at the underside. */
export const classAngleAt = (view: PathInView, i: number, sun: SunThere): number =>
  acosDeg(cosClassAngleAt(view, i, sun));

/** Its cosine, to a rounding: an arc cosine costs more than all else that a sample is passed over by. */
export function cosClassAngleAt(view: PathInView, i: number, sun: SunThere): number {
  const fromBelow = (view.up[i] as number) > sinUnderside * (view.range[i] as number);
  return fromBelow ? cosPhaseAt(view, i, sun) : cosLightAngleAt(view, i, sun);
}

export const lightClassAt = (view: PathInView, i: number, sun: SunThere): LightClass =>
  lightClass(sun.sun.geometricAltitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun));

/** Aspect in degrees at sample `i`, 0 nose-on; null where the heading is not known. */
export function aspectAt(view: PathInView, i: number): number | null {
  const cosine = view.cosAspectAt(i);
  return Number.isNaN(cosine) ? null : acosDeg(cosine);
}

/** Elevation in degrees of sample `i` above the horizontal at the eye; 0 where the eye is at the aircraft's centre. */
export function elevationAt(view: PathInView, i: number): number {
  const range = view.range[i] as number;
  return range > 0 ? Math.asin(Math.max(-1, Math.min(1, (view.up[i] as number) / range))) * DEG : 0;
}

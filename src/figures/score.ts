import { acosDeg, DEG, RAD } from './geometry/angles';
import {
  aspectFactors,
  darkFlankFactor,
  frontLitTo,
  harshFrom,
  sideLitTo,
  topLitFrom,
  twilightFactor,
} from './practice';
import { clearSky, flatLightAt, mistFactor, type SkyThere } from './light/sky';
import { civilTwilightAltitude, sunriseAltitude } from './light/sun';

/** The factors of a sample's score, each 0 to 1. All of them are common practice without a source (design, section 3). */

const clamp01 = (x: number) => (x < 0 ? 0 : x > 1 ? 1 : x);

/** Straight line from `ya` at `a` to `yb` at `b`, held constant outside. */
const ramp = (x: number, a: number, ya: number, b: number, yb: number) =>
  ya + (yb - ya) * clamp01((x - a) / (b - a));

/** The most that the light factor can reach under a clear sky with the sun at a geometric altitude, whatever the angle. */
export function clearCeiling(sunAltitude: number): number {
  if (sunAltitude < civilTwilightAltitude) return 0;
  if (sunAltitude < sunriseAltitude) return twilightFactor;
  return ramp(sunAltitude, harshFrom, 1, topLitFrom, 0.6);
}

/** A factor of clear sky with what cloud makes of it: less direct sun, and flat light instead. */
const underSky = (clear: number, sunAltitude: number, { direct }: SkyThere): number =>
  direct === 1 || sunAltitude < sunriseAltitude
    ? clear
    : direct * clear + (1 - direct) * flatLightAt(sunAltitude);

/** What rounding may add to a bound by which something is passed over. */
export const slack = 1 + 1e-9;

/** The most that the light factor can reach with the sun at a geometric altitude, whatever the angle. */
export const lightCeiling = (sunAltitude: number, sky: SkyThere = clearSky): number =>
  underSky(clearCeiling(sunAltitude), sunAltitude, sky);

/** The same with the flank dark. */
export const darkCeiling = (sunAltitude: number, sky: SkyThere): number =>
  sunAltitude < sunriseAltitude
    ? clearCeiling(sunAltitude)
    : underSky(clearCeiling(sunAltitude) * darkFlankFactor, sunAltitude, sky);

/** What an angle of the light class leaves of clear light: 1 in front light, and never more for a greater angle. */
export const angleFactor = (angle: number): number =>
  angle <= sideLitTo ? ramp(angle, frontLitTo, 1, sideLitTo, 0.6) : ramp(angle, sideLitTo, 0.6, 180, 0.2);

/** The same by the angle's cosine: in front light, where most of a day's best is, no arc cosine is needed. */
export const angleFactorBy = (cosine: number): number =>
  cosine >= cosFrontLit ? 1 : angleFactor(acosDeg(cosine));
/** What rounding of an arc cosine may do to a cosine near a limit. */
const rounding = 1e-12;
const cosFrontLit = Math.cos(frontLitTo * RAD) + rounding;

/** The greatest angle that leaves a factor: the inverse of `angleFactor`; 180 for what every angle leaves. */
export const angleLeaving = (factor: number): number =>
  factor > 0.6 ? ramp(factor, 0.6, sideLitTo, 1, frontLitTo) : ramp(factor, 0.2, 180, 0.6, sideLitTo);

/** `angle`: that of the light class, degrees. */
export function lightFactor(
  sunAltitude: number,
  angle: number,
  flankLit: boolean | null,
  sky: SkyThere = clearSky,
): number {
  return lightLeaving(clearCeiling(sunAltitude), sunAltitude, angleFactor(angle), flankLit, sky);
}

/** The same from what is worked out once for many: `clearCeiling` of the sun's altitude, and what the angle leaves. */
export function lightLeaving(
  ceiling: number,
  sunAltitude: number,
  left: number,
  flankLit: boolean | null,
  sky: SkyThere,
): number {
  if (sunAltitude < sunriseAltitude) return ceiling;
  return underSky(ceiling * left * (flankLit === false ? darkFlankFactor : 1), sunAltitude, sky);
}

/** `aspect`: degrees, 0 nose-on; null when not known, which is held against nobody. */
export function aspectFactor(aspect: number | null): number {
  if (aspect === null) return 1;
  const { noseOn, fullFrom, fullTo, tailOn } = aspectFactors;
  return aspect < fullFrom ? ramp(aspect, 0, noseOn, fullFrom, 1) : ramp(aspect, fullTo, 1, 180, tailOn);
}

/** The same by its cosine, NaN when not known: from side to side no arc cosine is needed. */
export function aspectFactorBy(cosine: number): number {
  const isSideOn = cosine <= cosFullFrom && cosine >= cosFullTo;
  return isSideOn || Number.isNaN(cosine) ? 1 : aspectFactor(acosDeg(cosine));
}
const cosFullFrom = Math.cos(aspectFactors.fullFrom * RAD) - rounding;
const cosFullTo = Math.cos(aspectFactors.fullTo * RAD) + rounding;

/**
 * Air over warm ground blurs long shots at high sun, mist veils them: `slantRange` m, `sunAltitude` geometric in degrees;
 * `standing`: what the sun does not change of it (`hazeOf`, `hazeBy`).
 */
export const hazeFactor = (
  standing: number,
  slantRange: number,
  sunAltitude: number,
  sky: SkyThere = clearSky,
): number => (1 - standing * hazeByAltitude(sunAltitude, sky)) * mistFactor(slantRange, sky);

/** m from which on it blurs, and degrees of elevation from which on one looks out of it. */
const hazeFrom = 500;
const aboveHaze = 10;
const sinAboveHaze = Math.sin(aboveHaze * RAD) + rounding;
const hazeByRange = (slantRange: number): number => 0.7 * clamp01((slantRange - hazeFrom) / 1500);
const hazeByElevation = (elevation: number): number => clamp01((aboveHaze - elevation) / 8);

/** What range in m and elevation in degrees do to the haze, whatever the sun. */
export const hazeOf = (slantRange: number, elevation: number): number =>
  hazeByRange(slantRange) * hazeByElevation(elevation);

/** The same from the sine of the elevation: near by, and from below, no arc sine is needed. */
export const hazeBy = (slantRange: number, sine: number): number =>
  slantRange <= hazeFrom || sine >= sinAboveHaze
    ? 0
    : hazeOf(slantRange, Math.asin(sine < -1 ? -1 : sine) * DEG);

/** What the sun does to the haze at a geometric altitude in degrees: less through cloud, which leaves the ground cool. */
export const hazeByAltitude = (sunAltitude: number, { direct }: SkyThere = clearSky): number =>
  direct * clamp01(sunAltitude / 30);

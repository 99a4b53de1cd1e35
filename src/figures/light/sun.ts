import { getPosition } from 'suncalc';
import type { Position } from '../../survey/document';
import { RAD } from '../geometry/angles';
import type { Sun } from '../types';

/**
 * The sun from a place at an instant (ms since 1970, UTC). Errors: geometric altitude and azimuth 0.01 degrees
 * (azimuth divided by the cosine of the altitude) against JPL Horizons.
 */
export function sunAt([lng, lat]: Position, instant: number): Sun {
  const { azimuth, altitude } = getPosition(new Date(instant), lat, lng);
  const geometricAltitude = withoutRefraction(altitude);
  return { azimuth, altitude: geometricAltitude + refraction(geometricAltitude), geometricAltitude };
}

/** suncalc's own refraction (Meeus 16.4, held constant below the horizon), in degrees of true altitude. */
function libraryRefraction(trueAltitude: number): number {
  const h = Math.max(0, trueAltitude) * RAD;
  return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179)) / RAD;
}

/** suncalc answers apparent altitudes only, and freezes the refraction at the horizon: taken out again here. */
function withoutRefraction(apparent: number): number {
  let h = apparent;
  for (let i = 0; i < 6; i++) h = apparent - libraryRefraction(h);
  return h;
}

/**
 * Standard refraction in degrees at a true altitude (Saemundsson 1986, as in Meeus 16.4). Below -1 degree, where
 * the formula has no meaning, it fades to nothing at the nadir.
 */
export function refraction(trueAltitude: number): number {
  const h = Math.max(-1, trueAltitude);
  const full = 1.02 / Math.tan((h + 10.3 / (h + 5.11)) * RAD) / 60;
  return trueAltitude < -1 ? (full * (trueAltitude + 90)) / 89 : full;
}

/** Geometric altitude of the sun's centre, in degrees, at sunrise and sunset: refraction 34' and radius 16'. */
export const sunriseAltitude = -0.833;
/** Geometric altitude, in degrees, at which civil twilight begins and ends. */
export const civilTwilightAltitude = -6;

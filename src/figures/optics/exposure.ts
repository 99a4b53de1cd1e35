import { clearSkyExposure } from '../practice';
import type { LightClass } from '../types';

export const skies = ['clear', 'hazy', 'overcast', 'heavy'] as const;
/** What is between the sun and the subject. */
export type Sky = (typeof skies)[number];

/** EV of f-number and shutter in s: log2(N^2 / t). */
export const exposureValue = (aperture: number, shutter: number): number =>
  Math.log2((aperture * aperture) / shutter);

/** The ISO speed at which f-number and shutter (s) suit a scene of `ev100`: EV at ISO S is EV100 + log2(S / 100). */
export const isoFor = (aperture: number, shutter: number, ev100: number): number =>
  100 * 2 ** (exposureValue(aperture, shutter) - ev100);

/** The shutter in s that suits a scene of `ev100` at an f-number and ISO. */
export const shutterFor = (aperture: number, iso: number, ev100: number): number =>
  (aperture * aperture) / (2 ** ev100 * (iso / 100));

/** The f-number that suits a scene of `ev100` at a shutter in s and ISO. */
export const apertureFor = (shutter: number, iso: number, ev100: number): number =>
  Math.sqrt(shutter * 2 ** ev100 * (iso / 100));

/** Stops below the clear sky: hazy sun with soft shadows, cloudy bright, heavy overcast (ANSI PH2.7: 15, 14, 13, 12). */
const belowClear: Readonly<Record<Sky, number>> = { clear: 0, hazy: 1, overcast: 2, heavy: 3 };

/** Stops that a clear sky loses when the sun does not come from behind the photographer (ANSI PH2.7, note). */
const byDirection: Partial<Readonly<Record<LightClass, number>>> = { 'side-lit': 1, 'back-lit': 2 };

/** What the exposure value at ISO 100 is made of. */
export interface SceneExposure {
  readonly ev100: number;
  /** Under a clear sky, lit from the front. */
  readonly bySun: number;
  /** Stops taken off for the sky, and for the direction of the light. */
  readonly bySky: number;
  readonly byLight: number;
}

/** Exposure value at ISO 100 of a subject. `sunAltitude`: geometric, degrees. */
export function sceneExposure(sunAltitude: number, light: LightClass, sky: Sky): SceneExposure {
  const bySun = clearSky(sunAltitude);
  const bySky = belowClear[sky];
  const byLight = sky === 'clear' ? (byDirection[light] ?? 0) : 0;
  return { ev100: bySun - bySky - byLight, bySun, bySky, byLight };
}

function clearSky(altitude: number): number {
  let [lowA, lowEv]: readonly [number, number] = clearSkyExposure[0];
  for (const [a, ev] of clearSkyExposure) {
    if (altitude < a) return a === lowA ? ev : lowEv + ((ev - lowEv) * (altitude - lowA)) / (a - lowA);
    [lowA, lowEv] = [a, ev];
  }
  return lowEv;
}

import { clearSkyExposure, shadowsFrom } from '../practice';
import { isFlat } from '../light/sky';
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

/** The share of direct sun that each of the words means. */
export const directOf: Readonly<Record<Sky, number>> = { clear: 1, hazy: 0.8, overcast: 0, heavy: 0 };

/**
 * Stops below the clear sky by the share of direct sun, straight lines in between: hazy sun with soft shadows 1, cloudy
 * bright without shadows 2 (ANSI PH2.7: 15, 14, 13). Heavy overcast takes 3; no report tells it from a bright one.
 */
function stopsBelowClear(sky: Sky | number): number {
  if (sky === 'heavy') return 3;
  const direct = typeof sky === 'number' ? sky : directOf[sky];
  return direct >= directOf.hazy ? (1 - direct) / (1 - directOf.hazy) : 2 - direct / directOf.hazy;
}

/** The word that comes nearest to a share of direct sun. */
export function skyWord(sky: Sky | number): Sky {
  if (typeof sky !== 'number') return sky;
  if (isFlat({ direct: sky })) return 'overcast';
  return sky < (1 + directOf.hazy) / 2 ? 'hazy' : 'clear';
}

/** Stops that the sun costs when it does not come from behind the photographer (ANSI PH2.7, note): where there are shadows. */
const byDirection: Partial<Readonly<Record<LightClass, number>>> = { 'side-lit': 1, 'back-lit': 2 };

/** What the exposure value at ISO 100 is made of. */
export interface SceneExposure {
  readonly ev100: number;
  /** Under a clear sky, lit from the front. */
  readonly bySun: number;
  /** Stops taken off for the sky, and for the direction of the light. */
  readonly bySky: number;
  readonly byLight: number;
  /** It was typed: floodlights, or a meter's word. */
  readonly typed: boolean;
}

/**
 * Exposure value at ISO 100 under an illuminance in lux, by the incident-light calibration C = 250 lx s (ISO 2720):
 * EV 0 is 2.5 lux, each doubling one more.
 */
export const evOfLux = (lux: number): number => Math.log2(lux / 2.5);

/**
 * Exposure value at ISO 100 of a subject. `sunAltitude`: geometric, degrees. `sky`: a word, or the share of direct sun.
 * `typed`: one that goes before all that.
 */
export function sceneExposure(
  sunAltitude: number,
  light: LightClass,
  sky: Sky | number,
  typed: number | null = null,
): SceneExposure {
  if (typed !== null) return { ev100: typed, bySun: typed, bySky: 0, byLight: 0, typed: true };
  const bySun = clearSky(sunAltitude);
  const bySky = stopsBelowClear(sky);
  const direct = typeof sky === 'number' ? sky : directOf[sky];
  const byLight = direct >= shadowsFrom.direction ? (byDirection[light] ?? 0) : 0;
  return { ev100: bySun - bySky - byLight, bySun, bySky, byLight, typed: false };
}

function clearSky(altitude: number): number {
  let [lowA, lowEv]: readonly [number, number] = clearSkyExposure[0];
  for (const [a, ev] of clearSkyExposure) {
    if (altitude < a) return a === lowA ? ev : lowEv + ((ev - lowEv) * (altitude - lowA)) / (a - lowA);
    [lowA, lowEv] = [a, ev];
  }
  return lowEv;
}

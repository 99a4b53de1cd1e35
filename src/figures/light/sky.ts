import { flatLight, shadowsFrom } from '../practice';
import { sunriseAltitude } from './sun';

/** What is between the sun, the aircraft and the eye at an instant. */
export interface SkyThere {
  /** Share of direct sun, 0 to 1: 0 under overcast. */
  readonly direct: number;
  /** m that one sees: meteorological optical range (WMO-No. 8); from 10 km on it takes nothing away. */
  readonly visibility: number;
}

/** What goes without any word of the weather. */
export const clearSky: SkyThere = { direct: 1, visibility: 10_000 };

/** The sky at an instant (ms since 1970, UTC). */
export type SkyAt = (instant: number) => SkyThere;
export const alwaysClear: SkyAt = () => clearSky;

/** The light of a clouded sky, from anywhere: its factor in the score at a geometric sun altitude in degrees. */
export function flatLightAt(sunAltitude: number): number {
  const share = (sunAltitude - sunriseAltitude) / (flatLight.fullFrom - sunriseAltitude);
  return flatLight.atHorizon + (flatLight.full - flatLight.atHorizon) * Math.max(0, Math.min(1, share));
}

/** Whether there is no direct sun to speak of: "flat light: either side", and nothing glares. */
export const isFlat = ({ direct }: Pick<SkyThere, 'direct'>): boolean => direct < shadowsFrom.glare;

/**
 * Share of contrast that mist leaves over a distance in m, beyond what 10 km of visibility take: the optical range is
 * where 5 % is left, which is exp(-3) (WMO-No. 8, part I, chapter 9: contrast falls as exp(-extinction x distance)).
 */
export const mistFactor = (slantRange: number, { visibility }: SkyThere): number =>
  visibility >= clearSky.visibility
    ? 1
    : Math.exp(-3 * slantRange * (1 / visibility - 1 / clearSky.visibility));

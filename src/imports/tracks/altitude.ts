import { feetToMetres } from '../../units/length';
import type { Answers } from '../bring-in/types';

/** The standard atmosphere (ICAO Doc 7488): hPa and K at sea level, K/m, m/s2, J/(kg K). */
const [p0, t0, lapse, g0, gas] = [1013.25, 288.15, 0.0065, 9.80665, 287.05287] as const;

/** m above the level of 1013.25 hPa at which the standard atmosphere has `pressure` (hPa), in the troposphere. */
export const pressureAltitude = (pressure: number): number =>
  (t0 / lapse) * (1 - (pressure / p0) ** ((gas * lapse) / g0));

type Meaning = Pick<Answers, 'altitudeMeaning' | 'qnh' | 'geoid'>;

/**
 * An altitude in m as m above mean sea level. Pressure altitudes move with the altimeter setting as an altimeter's
 * subscale moves them; how far the day's air was from the standard one is not known, and shows as an error that
 * grows with height above the airfield (about 4 % a 10 K).
 */
export function aboveSeaLevel(altitude: number, { altitudeMeaning, qnh, geoid }: Meaning): number {
  switch (altitudeMeaning) {
    case 'sea-level':
      return altitude;
    case 'pressure':
      return altitude - pressureAltitude(qnh);
    case 'ellipsoid':
      return altitude - geoid;
  }
}

export const inMetres = (altitude: number, unit: 'm' | 'ft'): number =>
  unit === 'm' ? altitude : feetToMetres(altitude);

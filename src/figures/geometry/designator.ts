import { wrap360 } from './angles';

/**
 * Two digits, "01" to "36": the whole number nearest one tenth of the magnetic azimuth seen from the approach
 * (FAA AC 150/5340-1, ICAO Annex 14 Vol I 5.2.2.4). North is 36, never 00.
 */
export function suggestedDesignator(magneticBearing: number): string {
  const tenth = Math.round(wrap360(magneticBearing) / 10) % 36;
  return String(tenth === 0 ? 36 : tenth).padStart(2, '0');
}

/** How many tens of degrees two designators lie apart, 0 to 18; null when one of them has no number from 1 to 36. */
export function designatorsApart(a: string, b: string): number | null {
  const [x, y] = [designatorNumber(a), designatorNumber(b)];
  if (x === null || y === null) return null;
  const apart = Math.abs(x - y) % 36;
  return Math.min(apart, 36 - apart);
}

/** The number of a designator like "09L"; null for "N", "H1" or "40". */
export function designatorNumber(designator: string): number | null {
  const digits = /^(\d{1,2})[A-Z]{0,2}$/.exec(designator.trim().toUpperCase())?.[1];
  const number = digits === undefined ? 0 : Number(digits);
  return number >= 1 && number <= 36 ? number : null;
}

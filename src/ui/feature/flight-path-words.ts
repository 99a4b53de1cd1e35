import type { JsonObject } from '../../survey/json';
import type { FlightPath } from '../../survey/schema/places';
import type { Formats } from '../formats';

/** Between which heights a flight path runs, and what its recorder counted from. `altitude`: as an import has left it. */
export function heightWords(
  { heights }: FlightPath,
  altitude: JsonObject | null,
  format: Pick<Formats, 'height' | 'fine'>,
): string {
  const least = heights.reduce((a, b) => Math.min(a, b), Infinity);
  const most = heights.reduce((a, b) => Math.max(a, b), -Infinity);
  const between = `Between ${format.height(least)} and ${format.height(most)} above mean sea level.`;
  const { meaning, qnh, geoid, tiedBy } = altitude ?? {};
  const counted =
    meaning === 'pressure' && typeof qnh === 'number'
      ? ` From pressure altitudes, with ${qnh} hPa.`
      : meaning === 'ellipsoid' && typeof geoid === 'number'
        ? ` From heights above the ellipsoid, with sea level ${format.fine(geoid)} above it.`
        : '';
  const tied =
    typeof tiedBy === 'number'
      ? ` Tied to the runway: ${tiedBy < 0 ? 'lowered' : 'raised'} by ${format.fine(Math.abs(tiedBy))}.`
      : '';
  return `${between}${counted}${tied}`;
}

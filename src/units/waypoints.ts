import { formatCoordinates, parseCoordinates } from './coordinates';
import { metresToFeet } from './length';
import { parseLength } from './typed-length';

/** `[longitude, latitude]`, degrees, WGS84. */
type Position = readonly [lng: number, lat: number];

/** A waypoint with its altitude in m above mean sea level. */
export interface Waypoint {
  readonly position: Position;
  readonly altitude: number;
}
export type WaypointsReading =
  | { readonly ok: true; readonly waypoints: readonly Waypoint[] }
  | { readonly ok: false; readonly reason: string };

const example = 'Type for example 51.4775, -0.485, 2500 ft or ABCDE 5128.65N 00029.10W 2500.';

/**
 * A published path as it is typed or pasted: a waypoint a line, its latitude and longitude in any form that
 * `parseCoordinates` reads, then its altitude in feet (or with "m" behind it). A name ahead of it is passed over, as are
 * empty lines. The first line that cannot be read is named with the mend.
 */
export function parseWaypoints(text: string): WaypointsReading {
  const waypoints: Waypoint[] = [];
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const read = parseWaypoint(line.trim());
    if (typeof read === 'string') return { ok: false, reason: `Line ${i + 1}: ${read}` };
    waypoints.push(read);
  }
  if (waypoints.length < 2)
    return { ok: false, reason: `A path has two waypoints or more, a line each. ${example}` };
  return { ok: true, waypoints };
}

function parseWaypoint(line: string): Waypoint | string {
  // A name is letters and digits that begin with two letters: N 51 is a latitude.
  const plain = line.replace(/^[A-Z]{2}[A-Z0-9-]*[\s:,;]+/i, '');
  const [, where, altitude] =
    /^(.*?\S)[\s,;]+([+-]?\d+(?:\.\d+)?\s*(?:ft|feet|m|metres?)?)$/iu.exec(plain) ?? [];
  if (where === undefined || altitude === undefined)
    return `it needs a latitude, a longitude and an altitude. ${example}`;
  const place = parseCoordinates(minutesApart(where));
  if (!place.ok) return place.reason;
  const height = parseLength(altitude, 'ft');
  if (!height.ok) return height.reason;
  return { position: place.position, altitude: height.metres };
}

/** "5128.65N 00029.10W", degrees and minutes run together as charts print them, with a sign between them. */
const minutesApart = (where: string): string =>
  where.replace(/\b(\d{2,3})(\d{2}\.\d+)\s*([NSEW])/gi, "$1°$2'$3");

/** The lines that `parseWaypoints` reads back: decimal degrees, altitudes in whole feet. */
export const formatWaypoints = (line: readonly Position[], heights: readonly number[]): string =>
  line
    .map(
      (position, i) =>
        `${formatCoordinates(position, 'decimal')}, ${Math.round(metresToFeet(heights[i] ?? 0))} ft`,
    )
    .join('\n');

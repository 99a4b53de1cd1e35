import type { Position } from '../survey/document';
import { isTimeZone } from '../time/local-time';

export interface FoundTimeZone {
  /** IANA name. */
  readonly timeZone: string;
  /** True: taken from the longitude alone, without borders and daylight saving. To be said to the user. */
  readonly guessed: boolean;
}

type Lookup = (latitude: number, longitude: number) => string;

/** Loaded when first asked for: the borders are most of its 73 kB. */
const loadLookup = async (): Promise<Lookup> => (await import('@photostructure/tz-lookup')).default;

/**
 * The time zone in which a position lies. Where the lookup cannot be loaded, or names a zone that this browser
 * does not know, the zone of the longitude stands in.
 */
export async function timeZoneAt(
  [lng, lat]: Position,
  load: () => Promise<Lookup> = loadLookup,
): Promise<FoundTimeZone> {
  try {
    const timeZone = (await load())(lat, lng);
    if (isTimeZone(timeZone)) return { timeZone, guessed: false };
  } catch {
    // Said by `guessed`: a survey can be started without the borders.
  }
  return { timeZone: zoneOfLongitude(lng), guessed: true };
}

/** Nautical zones, 15 degrees each. The sign of the Etc names is reversed: Etc/GMT-2 is two hours ahead of UTC. */
function zoneOfLongitude(lng: number): string {
  const ahead = Math.round(lng / 15);
  if (ahead === 0) return 'Etc/GMT';
  return `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`;
}

import type { Position } from '../survey/document';
import type { ZoneAt } from '../survey/zones';
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
  position: Position,
  load: () => Promise<Lookup> = loadLookup,
): Promise<FoundTimeZone> {
  return (await finder(load))(position);
}

/** The same for many places, once the borders are there. */
export async function zoneFinder(load: () => Promise<Lookup> = loadLookup): Promise<ZoneAt> {
  const find = await finder(load);
  return (position) => find(position).timeZone;
}

async function finder(load: () => Promise<Lookup>): Promise<(position: Position) => FoundTimeZone> {
  // Without the borders the longitude is asked; `guessed` says so.
  const lookup = await load().catch(() => null);
  return ([lng, lat]) => {
    const guess: FoundTimeZone = { timeZone: zoneOfLongitude(lng), guessed: true };
    try {
      const timeZone = lookup?.(lat, lng);
      return timeZone !== undefined && isTimeZone(timeZone) ? { timeZone, guessed: false } : guess;
    } catch {
      return guess;
    }
  };
}

/** Nautical zones, 15 degrees each. The sign of the Etc names is reversed: Etc/GMT-2 is two hours ahead of UTC. */
function zoneOfLongitude(lng: number): string {
  const ahead = Math.round(lng / 15);
  if (ahead === 0) return 'Etc/GMT';
  return `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`;
}

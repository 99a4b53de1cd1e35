import type { Position } from './document';
import { lastAnswer } from './memo';

/** The IANA name of the time zone in which a place lies; null while that is not known. */
export type ZoneAt = (position: Position) => string | null;

/** What of the standard's Temporal is asked, where the engine has it. */
interface NativeTemporal {
  readonly Instant: {
    fromEpochMilliseconds(ms: number): { toZonedDateTimeISO(zone: string): unknown };
  };
}
const native = (globalThis as { readonly Temporal?: NativeTemporal }).Temporal;

/** A zone's name, and nothing else that Temporal would take for one, such as an instant with a zone behind it. */
const named = /^[A-Za-z][A-Za-z0-9_+/-]*$/;

/** Whether a clock can be set by it. A survey asks for its own again with every move of a drag. */
const isZone = lastAnswer((name: string): boolean => {
  try {
    // The first formatter of a page takes 35 ms, which is more than all figures of its first screen.
    if (native && named.test(name)) native.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name);
    else new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
});

/** Where a survey's zone is from: its own word, the place it lies at, or neither. */
export type ZoneFrom = 'stated' | 'place' | 'nowhere';

export interface SiteZone {
  /** One that exists. */
  readonly timeZone: string;
  readonly timeZoneFrom: ZoneFrom;
  /** What is to be said of it, or null. */
  readonly doubt: string | null;
}

/**
 * The zone whose clock a survey goes by: its own, else that of the place. Without a place, or without anybody who knows
 * where zones lie, it is UTC. `stated`: as the survey has it, null for no word; `place`: null where nothing is drawn.
 */
export function siteZone(stated: string | null, place: Position | null, zoneAt: ZoneAt | null): SiteZone {
  if (stated !== null && isZone(stated)) return { timeZone: stated, timeZoneFrom: 'stated', doubt: null };
  const found = place && zoneAt ? zoneAt(place) : null;
  const timeZone = found ?? 'UTC';
  const timeZoneFrom = found === null ? 'nowhere' : 'place';
  const where = found === null ? '' : ', where the airfield lies,';
  if (stated !== null)
    return {
      timeZone,
      timeZoneFrom,
      doubt: `sunside.site.timeZone: there is no time zone "${stated}"; ${timeZone}${where} is used instead`,
    };
  // Nothing is drawn yet, or it is being looked up: there is nothing to doubt.
  const doubt =
    found === null
      ? null
      : `sunside.site.timeZone: expected a time zone, got nothing; ${timeZone}${where} is used`;
  return { timeZone, timeZoneFrom, doubt };
}

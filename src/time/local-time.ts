// Functions one by one and not the classes: that is less than half of the script before the first figure.
import { getISO } from 'temporal-polyfill/fns/Calendar';
import * as Instant from 'temporal-polyfill/fns/Instant';
import * as Now from 'temporal-polyfill/fns/Now';
import * as PlainDate from 'temporal-polyfill/fns/PlainDate';
import * as PlainDateTime from 'temporal-polyfill/fns/PlainDateTime';
import * as PlainTime from 'temporal-polyfill/fns/PlainTime';
import * as ZonedDateTime from 'temporal-polyfill/fns/ZonedDateTime';

/** The only place that turns instants (ms since 1970, UTC) into local time and back. Zones are IANA names. */

export function isTimeZone(zone: string): boolean {
  try {
    zoned(0, zone);
    return true;
  } catch {
    return false;
  }
}

const zoned = (instant: number, zone: string) =>
  Instant.toZonedDateTimeISO(Instant.fromEpochMilliseconds(Math.round(instant)), zone);

const plainDate = (date: string) => PlainDate.fromString(date, getISO);

/**
 * The instant of a wall-clock time ("18:30") on a date ("2026-06-21") in a zone. A time that the clocks skip is
 * moved on by the gap, one that comes twice is the first of the two, as RFC 5545 has it.
 */
export function instantOf(date: string, clock: string, zone: string): number {
  const wall = PlainDate.toPlainDateTime(plainDate(date), PlainTime.fromString(clock));
  return PlainDateTime.toZonedDateTime(wall, zone, { disambiguation: 'compatible' }).epochMilliseconds;
}

/**
 * The instant of a wall clock's full time ("2026-06-21T18:00:01.25") in a zone, and whether that time came once that day,
 * twice (the first is told), or was skipped (moved on by the gap).
 */
export function wallInstant(
  clock: string,
  zone: string,
): { readonly instant: number; readonly came: 'once' | 'twice' | 'skipped' } {
  const wall = PlainDateTime.fromString(clock, getISO);
  const at = (disambiguation: 'earlier' | 'later' | 'compatible') =>
    PlainDateTime.toZonedDateTime(wall, zone, { disambiguation });
  const compatible = at('compatible');
  const instant = compatible.epochMilliseconds;
  if (ZonedDateTime.equals(at('earlier'), at('later'))) return { instant, came: 'once' };
  const isWall = PlainDateTime.equals(ZonedDateTime.toPlainDateTime(compatible), wall);
  return { instant, came: isWall ? 'twice' : 'skipped' };
}

/** The civil day of a date in a zone, from its first instant to that of the next day: 23, 24 or 25 hours. */
export function dayOf(date: string, zone: string): { readonly from: number; readonly to: number } {
  return { from: dayStart(date, zone), to: dayStart(datePlus(date, 1), zone) };
}

/** The first instant of a date in a zone. */
export const dayStart = (date: string, zone: string): number =>
  PlainDate.toZonedDateTime(plainDate(date), zone).epochMilliseconds;

/** The date in a zone at an instant, "2026-06-21". */
export const dateAt = (instant: number, zone: string): string =>
  PlainDate.toString(ZonedDateTime.toPlainDate(zoned(instant, zone)));

/** The month in a zone at an instant, 1 to 12. */
export const monthAt = (instant: number, zone: string): number => zoned(instant, zone).month;

/** An instant well inside a month (1 to 12), whatever the zone: stands for the month where only that counts. */
export const withinMonth = (month: number): number => Date.UTC(2026, month - 1, 15, 12);

/** The wall-clock time in a zone at an instant, to the minute, "18:30". */
export const clockAt = (instant: number, zone: string): string =>
  PlainTime.toString(ZonedDateTime.toPlainTime(ZonedDateTime.roundToMinute(zoned(instant, zone))), {
    smallestUnit: 'minute',
  });

/** The zone's offset at an instant as people write it, "UTC+02:00". */
export const offsetAt = (instant: number, zone: string): string =>
  `UTC${ZonedDateTime.offset(zoned(instant, zone))}`;

/** The date some days on, "2026-06-22". */
export const datePlus = (date: string, days: number): string =>
  PlainDate.toString(PlainDate.addDays(plainDate(date), days));

/** An ISO 8601 instant with Z or an offset, in ms since 1970; null for anything else. */
export function parseInstant(text: string): number | null {
  try {
    return Instant.fromString(text).epochMilliseconds;
  } catch {
    return null;
  }
}

/** A date that exists, "2026-06-21"; null for anything else. */
export function parseDate(text: string): string | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return null;
  try {
    return PlainDate.toString(plainDate(text));
  } catch {
    return null;
  }
}

/** The first whole second at or after an instant that still lies before `end`: what happens at it has happened. */
export const wholeSecond = (instant: number, end: number): number => {
  const second = Math.ceil(instant / 1000) * 1000;
  return second < end ? second : Math.floor((end - 1) / 1000) * 1000;
};

/** An instant as figures print it, "2026-06-21T17:00:00Z". */
export const isoInstant = (instant: number): string =>
  Instant.toString(Instant.fromEpochMilliseconds(Math.round(instant)));

/** An instant to the second in the basic form that calendars use, "20260621T170000Z" (RFC 5545 3.3.5, form 2). */
export const basicInstant = (instant: number): string =>
  `${isoInstant(Math.floor(instant / 1000) * 1000)
    .slice(0, 19)
    .replace(/[-:]/g, '')}Z`;

/** The zone of this device. */
export const deviceZone = (): string => Now.timeZoneId();

/** Minutes of the wall clock since midnight in a zone at an instant, 0 to 1439. */
export function minuteOfDay(instant: number, zone: string): number {
  const { hour, minute } = zoned(instant, zone);
  return hour * 60 + minute;
}

/** ms by which the clock of a zone is ahead of UTC at an instant. */
export const offsetMs = (instant: number, zone: string): number =>
  ZonedDateTime.offsetNanoseconds(zoned(instant, zone)) / 1e6;

/** The day of the week of a date, 0 Monday to 6 Sunday. */
export const weekdayOf = (date: string): number => PlainDate.dayOfWeek(plainDate(date)) - 1;

import * as v from 'valibot';
import { shown } from '../json';

/**
 * Dates and times of a survey exist, or they are doubts: the thirtieth of February matches the form of a date and would
 * throw wherever it is turned into an instant. Years are those for which sun and magnetic field are worth computing.
 */
const firstYear = 1900;
const lastYear = 2199;

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** Whether "2026-06-21" is a day of the calendar. */
export function isDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)?.map(Number) ?? [];
  if (year === undefined || month === undefined || day === undefined) return false;
  return (
    year >= firstYear &&
    year <= lastYear &&
    month >= 1 &&
    month <= 12 &&
    day >= 1 &&
    day <= daysIn(year, month)
  );
}

/** Whether "18:30" is a time of day. */
export const isClock = (text: string): boolean => /^([01]\d|2[0-3]):[0-5]\d$/.test(text);

const instantForm =
  /^(\d{4}-\d{2}-\d{2})[T ]([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d)(?:\.(\d{1,9}))?)?(?:Z|([+-])([01]\d|2[0-3])(?::?([0-5]\d))?)$/;

/** The day that was asked for last and its beginning in ms since 1970, null for none of the calendar: a track names one day thousands of times. */
let lastDay: { readonly text: string; readonly ms: number | null } = { text: '', ms: null };

function dayMs(text: string): number | null {
  if (lastDay.text !== text) {
    const [year, month, day] = text.split('-').map(Number) as [number, number, number];
    lastDay = { text, ms: isDate(text) ? Date.UTC(year, month - 1, day) : null };
  }
  return lastDay.ms;
}

/** An instant of ISO 8601 with Z or an offset, in ms since 1970; null for anything else. */
export function instantMs(text: string): number | null {
  const [, date = '', hour, minute, second, fraction, sign, hours, minutes] = instantForm.exec(text) ?? [];
  const day = dayMs(date);
  if (day === null) return null;
  const ms = fraction === undefined ? 0 : Math.floor(Number(`0.${fraction}`) * 1000);
  const clock = day + ((Number(hour) * 60 + Number(minute)) * 60 + Number(second ?? 0)) * 1000 + ms;
  if (sign === undefined) return clock;
  const offset = (Number(hours) * 60 + Number(minutes ?? 0)) * 60_000;
  return clock - (sign === '-' ? -offset : offset);
}

const dateWords = `expected a date of the calendar like 2026-06-21, from ${firstYear} to ${lastYear}`;
const clockWords = 'expected a time of day like 18:30';
const instantWords = 'expected an instant that exists, like 2026-06-21T17:00:00Z';

export const date = v.pipe(v.string(dateWords), v.check(isDate, dateWords));
export const clock = v.pipe(v.string(clockWords), v.check(isClock, clockWords));
export const instant = v.pipe(
  v.string(instantWords),
  v.check((text) => instantMs(text) !== null, instantWords),
);

/** A date, a time of day or an instant that a survey need not name. */
export const dateField = v.nullish(date, null);
export const clockField = <D extends string | null>(fallback: D) => v.nullish(clock, fallback);
export const instantField = v.nullish(instant, null);

/**
 * The instants of a recorded path, one a position and none before the one ahead of it, in ms since 1970. Null where
 * the survey has none, or none that a speed can be taken from: then that is a doubt.
 */
export function readTimes(
  given: unknown,
  positions: number,
  doubt: (reason: string) => void,
): readonly number[] | null {
  if (given === undefined || given === null) return null;
  const unread = (reason: string) => {
    doubt(`times: ${reason}; they are not used, and its speed stays unknown`);
    return null;
  };
  if (!Array.isArray(given)) return unread(`expected a list of instants, got ${shown(given)}`);
  const list = given as readonly unknown[];
  if (list.length !== positions)
    return unread(`expected ${positions} instants, one a position, got ${list.length}`);
  const missing = list.filter((time) => time === null).length;
  if (missing > 0) return unread(`${missing} of ${positions} positions have no instant`);
  const read: number[] = [];
  for (const [i, time] of list.entries()) {
    const ms = typeof time === 'string' ? instantMs(time) : null;
    if (ms === null)
      return unread(`at ${i}, expected an instant like 2026-06-21T17:00:00Z, got ${shown(time)}`);
    if (ms < (read.at(-1) ?? -Infinity))
      return unread(`at ${i}, the instant lies before the one ahead of it`);
    read.push(ms);
  }
  return read;
}

import type { Position } from '../../survey/document';
import { dateAt, datePlus, dayOf, instantOf, weekdayOf } from '../../time/local-time';
import { sunTimes } from '../light/sun-times';
import type { Bound, OpenSpan } from './read-hours';

/** A stretch of time in instants, `to` excluded. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where and by whose clock hours are meant. */
export interface Locale {
  readonly position: Position;
  readonly timeZone: string;
}

/**
 * When it is open on a local date and into the night after it: what begins on the date, in order, overlaps joined.
 * Where the sun does not rise "sunrise-sunset" is never open, where it does not set always.
 */
export function openSpans(hours: readonly OpenSpan[], date: string, here: Locale): readonly Stretch[] {
  const weekday = weekdayOf(date);
  const stretches = hours
    .filter(({ days }) => days.includes(weekday))
    .flatMap(({ from, to }) => stretchOn(date, from, to, here))
    .sort((a, b) => a.from - b.from);
  const joined: Stretch[] = [];
  for (const stretch of stretches) {
    const last = joined.at(-1);
    if (last && stretch.from <= last.to)
      joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, stretch.to) };
    else joined.push(stretch);
  }
  return joined;
}

/** Whether it is open at an instant: by what begins on that day, or what the night before has left open. */
export function openAt(hours: readonly OpenSpan[], instant: number, here: Locale): boolean {
  const date = dateAt(instant, here.timeZone);
  return [date, datePlus(date, -1)].some((day) =>
    openSpans(hours, day, here).some(({ from, to }) => instant >= from && instant < to),
  );
}

function stretchOn(date: string, from: Bound, to: Bound, here: Locale): readonly Stretch[] {
  const begins = instantOn(date, from, here);
  const ends = instantOn(date, to, here);
  if (begins === null || ends === null) return [];
  if (ends > begins) return [{ from: begins, to: ends }];
  const next = instantOn(datePlus(date, 1), to, here);
  return next === null ? [] : [{ from: begins, to: next }];
}

/** Null where the sun stays down. */
function instantOn(date: string, bound: Bound, { position, timeZone }: Locale): number | null {
  const { from, to } = dayOf(date, timeZone);
  if (typeof bound === 'number') return bound === 24 * 60 ? to : instantOf(date, clockOf(bound), timeZone);
  const { sunrise, sunset, sunUp } = sunTimes(position, from, to);
  if (sunUp === 'never') return null;
  return bound === 'sunrise' ? (sunrise ?? from) : (sunset ?? to);
}

const clockOf = (minutes: number): string =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

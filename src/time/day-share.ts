import { instantOf } from './local-time';

/** A civil day: its first instant and that of the next day. */
export interface Day {
  readonly from: number;
  readonly to: number;
}

const minuteMs = 60_000;

/** Where an instant lies in a day, 0 at its beginning to 1 at its end; instants outside are held at the ends. */
export const shareOfDay = (instant: number, { from, to }: Day): number =>
  Math.max(0, Math.min(1, (instant - from) / (to - from)));

const held = (instant: number, first: number, last: number): number =>
  Math.max(first, Math.min(last, instant));

/** The instant at a share of a day, to the nearest whole step after midnight, within the day. */
export function instantAtShare(share: number, { from, to }: Day, stepMinutes: number): number {
  const step = stepMinutes * minuteMs;
  return held(from + Math.round((share * (to - from)) / step) * step, from, to - step);
}

/** An instant some minutes later (or earlier), kept from the day's first minute to its last. */
export const laterInDay = (instant: number, minutes: number, { from, to }: Day): number =>
  held(instant + minutes * minuteMs, from, to - minuteMs);

/** Full hours of the clock within a day, or a part of it, and where they lie in that: "06:00" at a quarter of most days. */
export function hourMarks(
  date: string,
  zone: string,
  day: Day,
  everyHours: number,
): { readonly clock: string; readonly share: number }[] {
  const marks = [];
  for (let hour = 0; hour < 24; hour += everyHours) {
    const clock = `${String(hour).padStart(2, '0')}:00`;
    const instant = instantOf(date, clock, zone);
    if (instant >= day.from && instant <= day.to) marks.push({ clock, share: shareOfDay(instant, day) });
  }
  return marks;
}

/** The middles of even steps through a day, from its first instant on: 288 of five minutes, on most days. */
export function evenSteps({ from, to }: Day, stepMinutes: number): Float64Array {
  const step = stepMinutes * minuteMs;
  return Float64Array.from({ length: Math.ceil((to - from) / step) }, (_, i) => from + (i + 0.5) * step);
}

/** The part of a day that some stretches and instants take up, out to the next half hours; the whole day without any. */
export function partOfDay(day: Day, stretches: readonly Day[], instants: readonly number[]): Day {
  if (stretches.length === 0) return day;
  const half = 30 * minuteMs;
  const first = Math.min(...stretches.map(({ from }) => from), ...instants);
  const last = Math.max(...stretches.map(({ to }) => to), ...instants);
  return {
    from: Math.max(day.from, Math.floor(first / half) * half),
    to: Math.min(day.to, Math.ceil(last / half) * half),
  };
}

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

/** Full hours of the clock through a day and where they lie in it: "06:00" at a quarter, on most days. */
export function hourMarks(
  date: string,
  zone: string,
  day: Day,
  everyHours: number,
): { readonly clock: string; readonly share: number }[] {
  const marks = [];
  for (let hour = 0; hour < 24; hour += everyHours) {
    const clock = `${String(hour).padStart(2, '0')}:00`;
    marks.push({ clock, share: shareOfDay(instantOf(date, clock, zone), day) });
  }
  return marks;
}

/** The middles of even steps through a day, from its first instant on: 288 of five minutes, on most days. */
export function evenSteps({ from, to }: Day, stepMinutes: number): Float64Array {
  const step = stepMinutes * minuteMs;
  return Float64Array.from({ length: Math.ceil((to - from) / step) }, (_, i) => from + (i + 0.5) * step);
}

import { clockAt, dateAt, datePlus, dayStart, instantOf } from './local-time';

/** A year of wall-clock times at a place: one column a date, one row every few minutes from midnight. */
export interface YearGrid {
  readonly year: number;
  /** "2026-01-01" and on, 365 or 366. */
  readonly dates: readonly string[];
  /** Index of the first date of each month. */
  readonly months: readonly number[];
  readonly rows: number;
  /** Instant (ms since 1970) of row r on the d-th date at [d * rows + r]; NaN where the clocks skip that time. */
  readonly instants: Float64Array;
}

const dayMs = 86_400_000;
const minuteMs = 60_000;
const kept = new Map<string, YearGrid>();

/**
 * The wall-clock times of a year in a zone, every `stepMinutes` (a divisor of 1440). A time that comes twice is the
 * first of the two. Kept for the next time: asking a zone costs more than the light.
 */
export function yearGrid(year: number, zone: string, stepMinutes: number): YearGrid {
  const key = `${year} ${stepMinutes} ${zone}`;
  const known = kept.get(key);
  if (known) return known;
  const rows = 1440 / stepMinutes;
  const dates: string[] = [];
  const first = `${String(year).padStart(4, '0')}-01-01`;
  for (let date = first; date.startsWith(first.slice(0, 4)); date = datePlus(date, 1)) dates.push(date);
  const instants = new Float64Array(dates.length * rows);
  const starts = [...dates, datePlus(first, dates.length)].map((date) => dayStart(date, zone));
  dates.forEach((date, d) => {
    const from = starts[d] as number;
    const plain = (starts[d + 1] as number) - from === dayMs;
    for (let r = 0; r < rows; r++)
      instants[d * rows + r] = plain
        ? from + r * stepMinutes * minuteMs
        : unusual(date, r * stepMinutes, zone);
  });
  const months = dates.flatMap((date, d) => (date.endsWith('-01') ? [d] : []));
  const grid = { year, dates, months, rows, instants };
  if (kept.size > 8) kept.clear();
  kept.set(key, grid);
  return grid;
}

/** The year of a date, "2026-06-21". */
export const yearOf = (date: string): number => Number(date.slice(0, 4));

/** The clock, "07:15", some minutes after midnight. */
export const clockOf = (minutes: number): string =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

/** Minutes after midnight of a clock, "07:15". */
export const minutesOf = (clock: string): number =>
  Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));

/** A time on a day when the clocks change: NaN where they skip it, since then the clock shows another one. */
function unusual(date: string, minutes: number, zone: string): number {
  const clock = clockOf(minutes);
  const instant = instantOf(date, clock, zone);
  return clockAt(instant, zone) === clock && dateAt(instant, zone) === date ? instant : NaN;
}

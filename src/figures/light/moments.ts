import type { Contents } from '../../survey/contents';
import { dateAt, dayOf, instantOf } from '../../time/local-time';

/** The survey's day and its two moments, as instants (ms since 1970, UTC). */
export interface Moments {
  /** The airfield's zone. */
  readonly timeZone: string;
  /** "2026-06-21" at the airfield. */
  readonly date: string;
  /** The civil day: from its first instant to that of the next. */
  readonly day: { readonly from: number; readonly to: number };
  readonly a: number;
  readonly b: number;
}

/** A survey that names no date is looked at today: `now` is an instant. */
export function momentsOf({ site, moments }: Pick<Contents, 'site' | 'moments'>, now: number): Moments {
  const { timeZone } = site;
  const date = moments.date ?? dateAt(now, timeZone);
  return {
    timeZone,
    date,
    day: dayOf(date, timeZone),
    a: instantOf(date, moments.a, timeZone),
    b: instantOf(date, moments.b, timeZone),
  };
}

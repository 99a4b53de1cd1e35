import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { MomentRule } from '../../survey/schema/site';
import { dateAt, dayOf, instantOf } from '../../time/local-time';
import { solarNoon } from './day-light';
import { sunTimes } from './sun-times';

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
  /** Moments whose rule names an event of the sun that the day does not have: their clock time stands in. */
  readonly unmet: readonly ('a' | 'b')[];
}

/** The event of the sun that a rule names, on a civil day; null where that day has none. */
function eventOn({ event }: MomentRule, position: Position, { from, to }: Moments['day']): number | null {
  return event === 'noon' ? solarNoon(position, from, to) : sunTimes(position, from, to)[event];
}

/**
 * A survey that names no date is looked at today: `now` is an instant. A moment with a rule follows the sun of the date;
 * where the date has no such event (a polar day, a shortened one) its clock time holds, and `unmet` names it.
 */
export function momentsOf({ site, moments }: Pick<Contents, 'site' | 'moments'>, now: number): Moments {
  const { timeZone } = site;
  const date = moments.date ?? dateAt(now, timeZone);
  const day = dayOf(date, timeZone);
  const unmet: ('a' | 'b')[] = [];
  const at = (moment: 'a' | 'b'): number => {
    const rule = moments[`${moment}Rule`];
    const event = rule && eventOn(rule, site.reference, day);
    if (rule && event !== null) return event + (rule.minutes ?? 0) * 60_000;
    if (rule) unmet.push(moment);
    return instantOf(date, moments[moment], timeZone);
  };
  return { timeZone, date, day, a: at('a'), b: at('b'), unmet };
}

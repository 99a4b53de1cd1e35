import type { Contents } from '../../survey/contents';
import { dateAt, dayOf } from '../../time/local-time';
import type { Day } from '../../time/day-share';

/** The airfield's day that holds an instant. */
export interface Today {
  readonly date: string;
  readonly timeZone: string;
  readonly span: Day;
}

export function todayAt({ timeZone }: Pick<Contents['site'], 'timeZone'>, instant: number): Today {
  const date = dateAt(instant, timeZone);
  const { from, to } = dayOf(date, timeZone);
  return { date, timeZone, span: { from, to } };
}

/** A field and its local date, as text: a visit is of one of them, and two surveys of one field share it. */
export function visitDay(
  { reference, timeZone }: Pick<Contents['site'], 'reference' | 'timeZone'>,
  instant: number,
): string {
  return `${reference.join()} ${dateAt(instant, timeZone)}`;
}

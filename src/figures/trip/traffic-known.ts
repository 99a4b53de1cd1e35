import type { Contents } from '../../survey/contents';
import { dateAt, parseInstant } from '../../time/local-time';
import { dueOn } from '../movements/due-on';
import { fewestMovements, shortestSpread } from './practice';

/** Movements an hour, and who says so; null: nobody. */
export interface TrafficKnown {
  readonly perHour: number;
  readonly from: 'typed' | 'log' | 'list';
}

/** What is known of a field's traffic on a date: typed, else the mean of the days in its log, else what is due that day. */
export function trafficKnown(
  { logEntries, movements, site }: Pick<Contents, 'logEntries' | 'movements' | 'site'>,
  date: string,
  typed: number | null,
): TrafficKnown | null {
  if (typed !== null) return { perHour: typed, from: 'typed' };
  const days = new Map<string, number[]>();
  for (const { time } of logEntries) {
    const instant = time === null ? null : parseInstant(time);
    if (instant === null) continue;
    const on = dateAt(instant, site.timeZone);
    days.set(on, [...(days.get(on) ?? []), instant]);
  }
  const logged = [...days.values()].flatMap((instants) => perHour(instants) ?? []);
  if (logged.length > 0)
    return { perHour: logged.reduce((sum, n) => sum + n, 0) / logged.length, from: 'log' };
  const due = perHour(dueOn(movements, date, site.timeZone).map(({ instant }) => instant));
  return due === null ? null : { perHour: due, from: 'list' };
}

/** Null where too few say anything. */
function perHour(instants: readonly number[]): number | null {
  if (instants.length < fewestMovements) return null;
  const spread = (Math.max(...instants) - Math.min(...instants)) / 3_600_000;
  return instants.length / Math.max(shortestSpread, spread);
}

import type { DisplayLine, ProgrammeEntry } from '../../survey/schema/flying';
import type { Subject } from '../../survey/schema/subject';
import { datePlus, instantOf } from '../../time/local-time';
import { subjectNamed } from '../movements/subject-named';
import { actLasts, actMargin } from './practice';

/** What flies an entry: a subject, nobody's guess where a type is given that no table has, or nothing said at all. */
export type ActType =
  | { readonly kind: 'known'; readonly subject: Subject }
  | { readonly kind: 'unknown'; readonly type: string }
  | { readonly kind: 'unsaid' };

/** An entry of a programme on its day. */
export interface Act {
  readonly entry: ProgrammeEntry;
  /** The day it is due on, local. */
  readonly date: string;
  /** ms since 1970, late as the programme runs; `to` excluded. Null where the programme has no time for it. */
  readonly slot: { readonly from: number; readonly to: number } | null;
  /** Minutes by which that is later than printed. */
  readonly late: number;
  /** Of one without a time: the entries with one that stand before and after it. */
  readonly between: readonly [before: ProgrammeEntry | null, after: ProgrammeEntry | null];
  /** Others that are flown at the same time. */
  readonly beside: readonly ProgrammeEntry[];
  readonly type: ActType;
}

const minute = 60_000;

/**
 * The programme of a display by instants. `date`: the day shown, which entries without a date of their own are due on. An
 * entry whose end is not said lasts until the next begins, ten minutes at most (CP).
 */
export function actsOf(
  display: DisplayLine,
  date: string,
  timeZone: string,
  subjects: readonly Subject[],
): Act[] {
  const { programme, late } = display;
  const days = programme.map((entry) => entry.date ?? date);
  const lateOn = (day: string) => (late?.date === day ? late.minutes : 0);
  const begins = programme.map((entry, i) => {
    const day = days[i] ?? date;
    return entry.time === null ? null : instantOf(day, entry.time, timeZone) + lateOn(day) * minute;
  });
  const slots = programme.map((entry, i) => {
    const [day, from] = [days[i] ?? date, begins[i] ?? null];
    return from === null ? null : { from, to: endOf(entry, day, from, begins, lateOn(day), timeZone) };
  });
  return programme.map((entry, i) => {
    const slot = slots[i] ?? null;
    return {
      entry,
      date: days[i] ?? date,
      slot,
      late: lateOn(days[i] ?? date),
      between: slot ? [null, null] : [timedFrom(i, -1), timedFrom(i, 1)],
      beside: programme.filter((_, k) => k !== i && meet(slot, slots[k] ?? null)),
      type: typeOf(entry, subjects),
    };
  });

  function timedFrom(i: number, step: number): ProgrammeEntry | null {
    for (let k = i + step; k >= 0 && k < programme.length; k += step)
      if (slots[k] && days[k] === days[i]) return programme[k] ?? null;
    return null;
  }
}

function endOf(
  entry: ProgrammeEntry,
  day: string,
  from: number,
  begins: readonly (number | null)[],
  late: number,
  timeZone: string,
): number {
  if (entry.to !== null && entry.time !== null) {
    // Past midnight it is over on the next day.
    const over = entry.to < entry.time ? datePlus(day, 1) : day;
    return Math.max(from + minute, instantOf(over, entry.to, timeZone) + late * minute);
  }
  const next = Math.min(...begins.filter((begin) => begin !== null && begin > from).map(Number));
  return Math.min(next, from + actLasts * minute);
}

const meet = (a: Act['slot'], b: Act['slot']): boolean => !!a && !!b && a.from < b.to && b.from < a.to;

/** The type in brackets, else a name that is one type's and nothing else ("14:20 Alpha Jet"). */
function typeOf({ type, name }: ProgrammeEntry, subjects: readonly Subject[]): ActType {
  const subject = subjectNamed(type === '' ? name : type, subjects);
  if (subject) return { kind: 'known', subject };
  return type === '' ? { kind: 'unsaid' } : { kind: 'unknown', type };
}

/** Whether a display is flown at an instant: while an act is on, a few minutes before and after it. */
export const isOn = ({ slot }: Act, instant: number): boolean =>
  slot !== null && instant >= slot.from - actMargin * minute && instant < slot.to + actMargin * minute;

import { dateAt, datePlus } from '../../time/local-time';
import { openSpans, type Locale, type Stretch } from './open-spans';
import { readOpeningHours } from './read-hours';

/** For each instant 1 where hours, as somebody wrote them, are open; what is not stated or cannot be read counts as open. */
export function openInstants(stated: string | null, instants: readonly number[], here: Locale): Uint8Array {
  const hours = stated === null ? null : readOpeningHours(stated);
  if (hours === null) return new Uint8Array(instants.length).fill(1);
  const known = new Map<string, readonly Stretch[]>();
  const on = (date: string): readonly Stretch[] => {
    const spans = known.get(date) ?? openSpans(hours, date, here);
    known.set(date, spans);
    return spans;
  };
  const isOpen = (instant: number): boolean => {
    const date = dateAt(instant, here.timeZone);
    return [date, datePlus(date, -1)].some((day) =>
      on(day).some(({ from, to }) => instant >= from && instant < to),
    );
  };
  return Uint8Array.from(instants, (instant) => (isOpen(instant) ? 1 : 0));
}

import type { CalendarEntry } from '../../exports/calendar';
import type { TripSheet } from '../../exports/trip/trip-sheet';
import type { FoundDay } from '../../ports/trips';
import { basicInstant } from '../../time/local-time';
import type { Formats } from '../formats';
import type { goingWords } from '../near/words';
import { endsWords, lensWords, placeWords, timeWords, wayWords, worthWords } from './words';

export const cautions: readonly string[] = [
  'Stay on public or permitted ground; the airfield’s and the police’s word goes before this plan. Never look at or near the sun through a lens. Not for navigation.',
];
/** Minutes before the first entry of a day, or before one has to leave, at which it is called out. CP. */
const firstAlarm = 60;
const leavingAlarm = 5;

interface Needs {
  readonly format: Formats;
  readonly by: keyof typeof goingWords;
}

/** The days of a trip in the order in which they begin, those of one day by their first rung. */
export const inOrder = (trip: readonly FoundDay[]): readonly FoundDay[] =>
  trip.toSorted((a, b) => startOf(a) - startOf(b));
const startOf = ({ day }: FoundDay): number => day.stays[0]?.from ?? Date.parse(day.date);

/** When to leave where one starts from, in ms since 1970; null where the way or the day's first rung is not known. */
export const leaveAt = ({ day, way }: FoundDay): number | null => {
  const [first] = day.stays;
  return first && way ? first.from - way.minutes * 60_000 : null;
};

/** Two fields of a trip between which there is no time for the way that each of them is from home. */
export function clashes(trip: readonly FoundDay[]): readonly string[] {
  const days = inOrder(trip).filter(({ day }) => day.stays.length > 0);
  return days.slice(1).flatMap((next, i) => {
    const before = days[i];
    const end = before?.day.stays.at(-1)?.to ?? 0;
    return before && startOf(next) < end
      ? [`${before.name} lasts until after ${next.name} has begun: one of them is cut short.`]
      : [];
  });
}

/** All rungs of a trip as entries of one calendar. */
export const tripEntries = (trip: readonly FoundDay[], { format, by }: Needs): CalendarEntry[] =>
  inOrder(trip).flatMap((found) => {
    const { survey, name, day } = found;
    const leave = leaveAt(found);
    return day.stays.map((stay, i): CalendarEntry => {
      const leaving =
        i === 0 && leave !== null
          ? `Leave by ${format.clockAt(leave, day.timeZone)} (${wayWords(found.way, by)}, by the straight line).`
          : '';
      return {
        // The same in every file, so that a calendar replaces what it has.
        uid: `${survey}.${stay.spot}.${basicInstant(stay.from)}@sunside`,
        from: stay.from,
        to: stay.to,
        title: `${placeWords(stay)}: ${stay.path}`,
        place: [stay.name, name].filter(Boolean).join(', '),
        position: stay.position,
        notes: [leaving, lensWords(stay), endsWords(day), ...cautions].filter(Boolean).join('\n'),
        alarm:
          i > 0
            ? {
                minutesBefore: leavingAlarm,
                text: `${placeWords(stay)} from ${timeWords(stay, day.timeZone, format)}`,
              }
            : {
                minutesBefore: leave === null ? firstAlarm : (stay.from - leave) / 60_000 + leavingAlarm,
                text: leaving || `${placeWords(stay)}, ${name}`,
              },
      };
    });
  });

/** The trip as one sheet, with the credits of every survey in it. */
export const tripSheetOf = (trip: readonly FoundDay[], { format, by }: Needs): TripSheet => {
  const days = inOrder(trip);
  return {
    title: `Trip: ${[...new Set(days.map(({ name }) => name))].join(', ')}`,
    days: days.map((found) => {
      const { day, name, way } = found;
      const leave = leaveAt(found);
      const gone =
        leave === null
          ? ''
          : `Leave by ${format.clockAt(leave, day.timeZone)}: ${wayWords(way, by)}, by the straight line.`;
      return {
        heading: `${format.day(day.date)}: ${name}`,
        remarks: [gone, endsWords(day), worthWords(day)].filter(Boolean),
        rungs: day.stays.map(
          (stay) =>
            [timeWords(stay, day.timeZone, format), placeWords(stay), stay.path, lensWords(stay)] as const,
        ),
      };
    }),
    cautions: [...clashes(trip), ...cautions],
    credits: [...new Set(days.flatMap(({ credits }) => credits))],
  };
};

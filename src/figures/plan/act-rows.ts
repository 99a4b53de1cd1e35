import type { Contents } from '../../survey/contents';
import type { Day } from '../../time/day-share';
import type { ElevationGrid } from '../sight/terrain';
import { everyPath } from '../traffic/every-path';
import { dayRows, type DayRow } from '../when/day-rows';
import { keptViewsOfTypes } from '../when/still-views';
import { framedFor, programmeOf, type Programme } from './acts-due';

/**
 * The passes of the day's displays as the types of their acts fly them, each from every spot through the day: the rows that
 * a plan has besides those of the subject at hand.
 */
export function actRows(
  contents: Contents,
  programmes: readonly Programme[],
  day: Day,
  terrain: ElevationGrid | null,
): DayRow[] {
  const { subject: atHand } = contents;
  const framed = programmes.flatMap(({ acts }) => acts.map((act) => framedFor(act, atHand)));
  const types = new Map(framed.filter(({ key }) => key !== atHand.key).map((type) => [type.key, type]));
  return [...types.values()].flatMap((subject) => {
    const flown = programmes.filter(({ acts }) =>
      acts.some((act) => framedFor(act, atHand).key === subject.key),
    );
    const asFlown = { ...contents, subject };
    const passes = everyPath(asFlown, (kind) => kind === 'pass', terrain).filter(
      ({ ref }) => programmeOf(flown, ref) !== null,
    );
    return dayRows(asFlown, passes, day, terrain, undefined, keptViewsOfTypes).map((row) => ({
      ...row,
      key: `${row.key} ${subject.key}`,
    }));
  });
}

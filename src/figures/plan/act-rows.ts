import type { Contents } from '../../survey/contents';
import { evenSteps, type Day } from '../../time/day-share';
import type { ElevationGrid } from '../sight/terrain';
import { everyPath } from '../traffic/every-path';
import { dayRows, dayStepMinutes, type DayRow } from '../when/day-rows';
import { keptViewsOfTypes } from '../when/still-views';
import { framedFor, isActOn, programmeOf, type Programme } from './acts-due';

/**
 * The passes of the day's displays as the types of their acts fly them, each from every spot: the rows that
 * a plan has besides those of the subject at hand. Light is told while an act of the type is on, and not else.
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
    const flown = programmes
      .map((p) => ({ ...p, acts: p.acts.filter((act) => framedFor(act, atHand).key === subject.key) }))
      .filter(({ acts }) => acts.length > 0);
    const wanted = Array.from(evenSteps(day, dayStepMinutes), (instant) =>
      flown.some((programme) => isActOn(programme, instant)) ? instant : NaN,
    );
    const asFlown = { ...contents, subject };
    const passes = everyPath(asFlown, (kind) => kind === 'pass', terrain).filter(
      ({ ref }) => programmeOf(flown, ref) !== null,
    );
    return dayRows(asFlown, passes, day, terrain, undefined, keptViewsOfTypes, wanted).map((row) => ({
      ...row,
      key: `${row.key} ${subject.key}`,
    }));
  });
}

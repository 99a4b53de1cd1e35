import type { Contents } from '../../survey/contents';
import { dateAt, datePlus } from '../../time/local-time';
import { dueOn, type DueMovement } from './due-on';

/** What was due on the day of an instant (ms since 1970) and the days beside it. */
export function dueAbout(
  instant: number,
  { movements, site: { timeZone } }: Pick<Contents, 'movements' | 'site'>,
): readonly DueMovement[] {
  const day = dateAt(instant, timeZone);
  return [-1, 0, 1].flatMap((d) => dueOn(movements, datePlus(day, d), timeZone));
}

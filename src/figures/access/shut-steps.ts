import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { dateAt, datePlus } from '../../time/local-time';
import { hoursAt } from './hours-at';
import { openSpans } from './open-spans';

/**
 * Which of a day's steps (by their middles, instants) lie outside a spot's hours, its own before the field's: 1 where
 * shut. Null where nobody states hours, or they cannot be read and count as open.
 */
export function shutSteps(
  spot: StandingSpot,
  { rules, site }: Pick<Contents, 'rules' | 'site'>,
  middles: Float64Array,
): Uint8Array | null {
  const { hours } = hoursAt(spot, rules);
  const [first] = middles;
  if (hours === null || first === undefined) return null;
  const date = dateAt(first, site.timeZone);
  const open = [datePlus(date, -1), date].flatMap((day) =>
    openSpans(hours, day, { position: spot.position, timeZone: site.timeZone }),
  );
  return Uint8Array.from(middles, (t): number => (open.some(({ from, to }) => t >= from && t < to) ? 0 : 1));
}

import type { Contents } from '../../survey/contents';
import type { Access, StandingSpot } from '../../survey/schema/standing-spot';
import { dateAt } from '../../time/local-time';
import { ruleDoubts, spotAccessDoubts } from './access-doubts';
import { fieldForbidsPhotographs } from './field-forbids-photographs';
import { hoursAt } from './hours-at';
import { openAt } from './open-spans';
import { statusOn } from './status-on';

/** Whether one may stand at a spot at an instant, and all that speaks against it or makes it doubtful. */
export interface MayStand {
  /** The spot's status, after what was asked and answered. */
  readonly status: NonNullable<Access['status']>;
  /** False outside the hours that can be read. */
  readonly open: boolean;
  /** The field forbids photography: nothing is proposed, whatever the spot says. */
  readonly fieldForbids: boolean;
  /** In plain words, for the panel and the sheet. */
  readonly doubts: readonly string[];
}

/**
 * Design, part two, section 11. A spot's own hours go before the field's. Dates are local to the site; a check is old
 * a calendar year after its day.
 */
export function mayStand(
  spot: StandingSpot,
  { rules, site }: Pick<Contents, 'rules' | 'site'>,
  instant: number,
): MayStand {
  const { access, position } = spot;
  const date = dateAt(instant, site.timeZone);
  const { hours } = hoursAt(spot, rules);
  return {
    status: statusOn(access, date),
    open: hours === null || openAt(hours, instant, { position, timeZone: site.timeZone }),
    fieldForbids: fieldForbidsPhotographs(rules),
    doubts: [...spotAccessDoubts(spot, rules, date), ...ruleDoubts(rules, date)],
  };
}

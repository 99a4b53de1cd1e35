import type { Contents } from '../../survey/contents';
import type { Access, Permission, StandingSpot } from '../../survey/schema/standing-spot';
import { dateAt } from '../../time/local-time';
import { hoursAt } from './hours-at';
import { openAt } from './open-spans';

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
  const doubts: string[] = [];
  const { stated, hours } = hoursAt(spot, rules);
  if (stated !== null && hours === null)
    doubts.push(`Check hours: "${stated}" cannot be read, so it counts as open.`);
  if (isOld(access.checkedOn, date))
    doubts.push(`Access here was last checked on ${access.checkedOn}, over a year before.`);
  if (isOld(rules.checkedOn, date))
    doubts.push(`The field's rules were last checked on ${rules.checkedOn}, over a year before.`);
  const { permission } = access;
  if (permission?.answer === 'granted' && permission.until !== null && permission.until < date)
    doubts.push(`The permission ends on ${permission.until}, before this day.`);
  return {
    status: permission ? answered(permission, date, access.status) : (access.status ?? 'unknown'),
    open: hours === null || openAt(hours, instant, { position, timeZone: site.timeZone }),
    fieldForbids: rules.photography === 'forbidden',
    doubts,
  };
}

/** Where the spot itself is forbidden, waiting or an expired permission does not open it. */
function answered({ answer, from, until }: Permission, date: string, status: Access['status']) {
  if (answer === 'refused') return 'forbidden';
  const holds = answer === 'granted' && (from === null || from <= date) && (until === null || date <= until);
  if (holds) return 'permitted';
  return status === 'forbidden' ? 'forbidden' : 'ask';
}

/** Dates compare as text: the same day one year on is not yet over a year. */
const isOld = (checked: string | null, date: string): boolean =>
  checked !== null && `${Number(checked.slice(0, 4)) + 1}${checked.slice(4)}` < date;

import type { Rules } from '../../survey/schema/rules';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { hoursAt } from './hours-at';

/** What is doubtful about standing at a spot on a local date, in plain words: the spot's own record alone. */
export function spotAccessDoubts(
  spot: Pick<StandingSpot, 'access'>,
  rules: Pick<Rules, 'hours'>,
  date: string,
): string[] {
  const { checkedOn, permission } = spot.access;
  const doubts: string[] = [];
  const { stated, hours } = hoursAt(spot, rules);
  if (stated !== null && hours === null)
    doubts.push(`Check hours: "${stated}" cannot be read, so it counts as open.`);
  if (isOld(checkedOn, date))
    doubts.push(`Access here was last checked on ${checkedOn}, over a year before.`);
  if (!permission) return doubts;
  const { answer, askedOn, from, until } = permission;
  if (answer === 'waiting')
    doubts.push(
      `Permission was asked for${askedOn === null ? '' : ` on ${askedOn}`}; there is no answer yet.`,
    );
  if (answer === 'granted' && until !== null && until < date)
    doubts.push(`The permission ends on ${until}, before this day.`);
  if (answer === 'granted' && until === null && isOld(askedOn, date))
    doubts.push(
      `The permission of ${askedOn} names no last day; it was asked for over a year before. Ask again.`,
    );
  if (answer === 'granted' && from !== null && from > date)
    doubts.push(`The permission begins on ${from}, after this day.`);
  return doubts;
}

/** The same of the field's own rules. */
export function ruleDoubts(rules: Pick<Rules, 'checkedOn' | 'photography'>, date: string): string[] {
  const doubts: string[] = [];
  if (rules.photography === 'forbidden')
    doubts.push('The field forbids photography: no spot is proposed. Ask its office.');
  if (isOld(rules.checkedOn, date))
    doubts.push(`The field's rules were last checked on ${rules.checkedOn}, over a year before.`);
  return doubts;
}

/** Dates compare as text: the same day one year on is not yet over a year. */
const isOld = (checked: string | null, date: string): boolean =>
  checked !== null && `${Number(checked.slice(0, 4)) + 1}${checked.slice(4)}` < date;

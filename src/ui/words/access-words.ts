import type { LadderAt } from '../../figures/access/ladder-at';
import type { Rules } from '../../survey/schema/rules';
import type { Access, Permission } from '../../survey/schema/standing-spot';

/** The access record in a word or two: "check first" wherever nobody has said yes yet. */
export const accessBadge: Readonly<Record<NonNullable<Access['status']>, string>> = {
  public: 'public',
  permitted: 'permitted',
  ask: 'ask: check first',
  forbidden: 'forbidden',
  unknown: 'check first',
};

/** The badge of a spot on a day: whatever it says itself, where the field forbids photography it says that. */
export const standingBadge = (status: NonNullable<Access['status']>, fieldForbids: boolean): string =>
  fieldForbids && status !== 'forbidden' ? 'field forbids photographs' : accessBadge[status];

export const ruleWords: Readonly<Record<NonNullable<Rules['photography']>, string>> = {
  allowed: 'allowed',
  ask: 'ask first',
  forbidden: 'forbidden',
  unknown: 'not known: ask',
};

export const answerWords: Readonly<Record<NonNullable<Permission['answer']>, string>> = {
  waiting: 'waiting for an answer',
  granted: 'granted',
  refused: 'refused',
};

/** "granted, 20 Jun 2026 to 21 Jun 2026, by the office, reference T-17". `date`: a local date in words. */
export function permissionWords(
  { answer, askedOn, by, from, until, reference }: Permission,
  date: (date: string) => string,
): string {
  const days =
    from !== null && until !== null
      ? from === until
        ? date(from)
        : `${date(from)} to ${date(until)}`
      : from !== null
        ? `from ${date(from)}`
        : until !== null && `until ${date(until)}`;
  const parts = [
    answerWords[answer ?? 'waiting'],
    days,
    by !== null && `by ${by}`,
    reference !== null && `reference ${reference}`,
    answer === 'waiting' && askedOn !== null && `asked on ${date(askedOn)}`,
  ];
  return parts.filter((part) => typeof part === 'string').join(', ');
}

/** Whether a ladder may stand there, in words that keep what somebody has said. */
export function ladderWords({ may, said }: LadderAt): string {
  if (said !== null) return said;
  return {
    yes: 'allowed',
    'as-said': 'as said',
    ask: 'ask first',
    no: 'none',
    unknown: 'not known: ask first',
  }[may];
}

import type { Access } from '../../survey/schema/standing-spot';

/** The access record in a word or two: "check first" wherever nobody has said yes yet. */
export const accessBadge: Readonly<Record<NonNullable<Access['status']>, string>> = {
  public: 'public',
  permitted: 'permitted',
  ask: 'ask: check first',
  forbidden: 'forbidden',
  unknown: 'check first',
};

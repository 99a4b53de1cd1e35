import type { Rules } from '../../survey/schema/rules';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { readOpeningHours, type OpenSpan } from './read-hours';

/** The opening hours that hold at a spot: its own word goes before the field's. */
export interface HoursAt {
  /** As they are noted; null where nobody states any. */
  readonly stated: string | null;
  /** Null where none are stated, or they cannot be read and count as open. */
  readonly hours: readonly OpenSpan[] | null;
}

export function hoursAt({ access }: Pick<StandingSpot, 'access'>, rules: Pick<Rules, 'hours'>): HoursAt {
  const stated = access.hours ?? rules.hours;
  return { stated, hours: stated === null ? null : readOpeningHours(stated) };
}

import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { spotDoubts } from '../checks/spot-checks';

/** Whether one may stand at a spot: ranked, ranked and marked, never ranked (design, section 3). */
export type Standing = 'open' | 'check-first' | 'nobody';

export function standingOf(spot: StandingSpot, contents: Contents): Standing {
  const { status } = spot.access;
  if (status === 'forbidden' || spotDoubts(spot, contents).length > 0) return 'nobody';
  return status === 'ask' || status === 'unknown' ? 'check-first' : 'open';
}

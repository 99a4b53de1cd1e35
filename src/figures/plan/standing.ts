import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { mayStand } from '../access/may-stand';
import { spotDoubts } from '../checks/spot-checks';

/** Whether one may stand at a spot: ranked, ranked and marked, never ranked (design, section 3). */
export type Standing = 'open' | 'check-first' | 'nobody';

/** By what holds on the date of an instant; hours are counted apart, step by step. */
export function standingOf(spot: StandingSpot, contents: Contents, instant: number): Standing {
  const { status, fieldForbids } = mayStand(spot, contents, instant);
  if (fieldForbids || status === 'forbidden' || spotDoubts(spot, contents).length > 0) return 'nobody';
  return status === 'ask' || status === 'unknown' ? 'check-first' : 'open';
}

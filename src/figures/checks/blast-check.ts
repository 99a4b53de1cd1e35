import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { alongRunway } from '../geometry/along-runway';
import { blastHalfWidth, blastLength } from '../practice';
import { endName } from '../traffic/end-name';

/**
 * What is to be known of a spot behind an end from which jets take off. Nobody is kept away: the road may be public, and whoever put
 * the spot there may know it. But it is said.
 */
export function blastDoubts(
  { id, position }: Pick<StandingSpot, 'id' | 'position'>,
  { runways, subject }: Pick<Contents, 'runways' | 'subject'>,
): Problem[] {
  if (subject.propulsion !== 'jet') return [];
  return runways.flatMap((runway) => {
    const place = alongRunway(runway, position);
    if (!place || Math.abs(place.offset) > blastHalfWidth) return [];
    return ([0, 1] as const).flatMap((end) => {
      const behind = end === 0 ? -place.station : place.station - place.length;
      if (runway.ends[end].closed || behind < 0 || behind > blastLength) return [];
      const reason = `The spot is ${Math.round(behind)} m behind the end from which ${endName(runway, end)} departs: jet blast. Keep clear while jets begin their take-off.`;
      return [{ id, reason, used: true }];
    });
  });
}

import type { Access, StandingSpot } from '../../survey/schema/standing-spot';

/** Ids of the spots where nobody may stand with a camera: by their standing (one a spot, in order) or the field's rules. */
export function closedSpots(
  spots: readonly StandingSpot[],
  standing: readonly Access['status'][],
  fieldForbids: boolean,
): ReadonlySet<string> {
  const closed = spots.filter((_, i) => fieldForbids || standing[i] === 'forbidden');
  return new Set(closed.map(({ id }) => id));
}

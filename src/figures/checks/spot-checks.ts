import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { polygon } from '@turf/helpers';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { Problem } from '../../survey/problems';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { alongRunway } from '../geometry/along-runway';
import { endName } from '../traffic/paths';

/** Why nobody should stand at a spot: on a runway, an apron, or in a no-go area. */
export function spotDoubts(spot: StandingSpot, contents: Contents): Problem[] {
  const reasons: string[] = [];
  const inside = (rings: readonly (readonly Position[])[]) => isInside(spot.position, rings);
  for (const runway of contents.runways) {
    const place = alongRunway(runway, spot.position);
    if (
      place &&
      Math.abs(place.offset) <= runway.width / 2 &&
      place.station >= 0 &&
      place.station <= place.length
    )
      reasons.push(
        `The spot is on runway ${endName(runway, 0)}/${endName(runway, 1)}. Move it to where one may stand.`,
      );
  }
  for (const apron of contents.aprons)
    if (inside(apron.rings))
      reasons.push(`The spot is on ${apron.name || 'an apron'}. Move it to where one may stand.`);
  for (const area of contents.noGoAreas)
    if (inside(area.rings))
      reasons.push(
        `The spot is in the no-go area ${area.name || area.reason || 'drawn here'}. Nobody may stand there.`,
      );
  return reasons.map((reason) => ({ id: spot.id, reason, used: true }));
}

/** Point in polygon, also across the antimeridian: longitudes are counted from the point. */
function isInside([lng, lat]: Position, rings: readonly (readonly Position[])[]): boolean {
  const shifted = rings.map((ring) =>
    ring.map(([x, y]): [number, number] => [((x - lng + 540) % 360) - 180, y]),
  );
  return booleanPointInPolygon([0, lat], polygon(shifted));
}

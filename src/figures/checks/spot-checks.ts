import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { polygon } from '@turf/helpers';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { Problem } from '../../survey/problems';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { alongRunway } from '../geometry/along-runway';
import { wrap180 } from '../geometry/angles';
import { frameAt, mapped } from '../geometry/earth';
import { taxiHalfWidth } from '../practice';
import { endName } from '../traffic/end-name';

/** m beyond a runway's end that still count as on it: a spot set upon the end itself is not a hair's breadth behind it. */
export const byTheEnd = 1;

/** Why nobody should stand at a spot: on a runway, a taxi route, an apron, or in a no-go area. */
export function spotDoubts(spot: StandingSpot, contents: Contents): Problem[] {
  const reasons: string[] = [];
  const inside = (rings: readonly (readonly Position[])[]) => isInside(spot.position, rings);
  for (const runway of contents.runways) {
    const place = alongRunway(runway, spot.position);
    if (
      place &&
      Math.abs(place.offset) <= runway.width / 2 &&
      place.station >= -byTheEnd &&
      place.station <= place.length + byTheEnd
    )
      reasons.push(
        `The spot is on runway ${endName(runway, 0)}/${endName(runway, 1)}. Move it to where one may stand.`,
      );
  }
  for (const route of contents.taxiRoutes)
    if (metresFromLine(spot.position, route.line) <= taxiHalfWidth)
      reasons.push(
        `The spot is on taxi route ${route.name || 'drawn here'}. Move it to where one may stand.`,
      );
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

/** m along the ground from a position to the nearest point of a line. */
function metresFromLine(position: Position, line: readonly Position[]): number {
  const frame = frameAt(position);
  const places = line.map((vertex) => mapped(frame, vertex));
  let nearest = Infinity;
  for (const [i, [x1, y1]] of places.entries()) {
    const [x0, y0] = places[i - 1] ?? [x1, y1];
    const [dx, dy] = [x1 - x0, y1 - y0];
    const squared = dx * dx + dy * dy;
    const t = squared === 0 ? 0 : Math.max(0, Math.min(1, -(x0 * dx + y0 * dy) / squared));
    nearest = Math.min(nearest, Math.hypot(x0 + t * dx, y0 + t * dy));
  }
  return nearest;
}

/** Point in polygon, also across the antimeridian: longitudes are counted from the point. */
function isInside([lng, lat]: Position, rings: readonly (readonly Position[])[]): boolean {
  const shifted = rings.map((ring) => ring.map(([x, y]): [number, number] => [wrap180(x - lng), y]));
  return booleanPointInPolygon([0, lat], polygon(shifted));
}

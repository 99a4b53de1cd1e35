import type { Runway } from '../../survey/schema/runway';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { alongRunway } from '../geometry/along-runway';
import { compassPoint } from '../geometry/compass';
import type { RunwayFromSpot } from '../types';

/** m off a centreline under which a spot is on neither side. */
const onTheLine = 0.5;

/** How a spot lies to each runway that has a direction. */
export function runwaysFrom(spot: StandingSpot, runways: readonly Runway[]): RunwayFromSpot[] {
  const out: RunwayFromSpot[] = [];
  for (const runway of runways) {
    const place = alongRunway(runway, spot.position);
    if (!place) continue;
    const side = Math.abs(place.offset) < onTheLine ? null : place.offset > 0 ? 'right' : 'left';
    out.push({
      id: runway.id,
      centrelineDistance: Math.abs(place.offset),
      side,
      compassSide: side === null ? null : compassPoint(place.azimuth + (side === 'right' ? 90 : -90)),
      station: place.station,
    });
  }
  return out;
}

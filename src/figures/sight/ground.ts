import type { Runway } from '../../survey/schema/runway';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { endElevations } from '../traffic/runway-geometry';
import { alongRunway } from '../geometry/along-runway';

export interface Ground {
  /** m above mean sea level. */
  readonly elevation: number;
  readonly from: 'stated' | 'runway' | 'site';
}

/** Ground under a spot: its own stated value, else the pavement of the nearest runway, else `field`, the field's elevation. */
export function groundUnder(
  spot: Pick<StandingSpot, 'ground' | 'position'>,
  runways: readonly Runway[],
  field: number,
): Ground {
  if (spot.ground !== null) return { elevation: spot.ground, from: 'stated' };
  let nearest: { distance: number; elevation: number } | null = null;
  for (const runway of runways) {
    const place = alongRunway(runway, spot.position);
    if (!place) continue;
    const t = Math.max(0, Math.min(place.length, place.station));
    const distance = Math.hypot(place.offset, place.station - t);
    if (nearest && nearest.distance <= distance) continue;
    const [a, b] = endElevations(runway, field);
    nearest = { distance, elevation: a + ((b - a) * t) / place.length };
  }
  return nearest ? { elevation: nearest.elevation, from: 'runway' } : { elevation: field, from: 'site' };
}

import type { Position } from '../../survey/document';
import type { Runway } from '../../survey/schema/runway';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { endElevations } from '../traffic/runway-geometry';
import { alongRunway } from '../geometry/along-runway';
import { terrainAt, type Terrain } from './terrain';

export interface GroundUnder {
  /** m above mean sea level. */
  readonly elevation: number;
  readonly from: 'stated' | 'terrain' | 'runway' | 'site';
}

/**
 * Ground under a spot: its own stated value, else the terrain, else the pavement of the nearest runway, else `field`,
 * the field's elevation.
 */
export function groundUnder(
  spot: Pick<StandingSpot, 'ground' | 'position'>,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null = null,
): GroundUnder {
  if (spot.ground !== null) return { elevation: spot.ground, from: 'stated' };
  return groundAt(spot.position, runways, field, terrain);
}

/** Ground at a place that says nothing of it itself. */
export function groundAt(
  position: Position,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null,
): GroundUnder {
  const known = terrain && terrainAt(terrain, position);
  if (known !== null) return { elevation: known, from: 'terrain' };
  let nearest: { distance: number; elevation: number } | null = null;
  for (const runway of runways) {
    const place = alongRunway(runway, position);
    if (!place) continue;
    const t = Math.max(0, Math.min(place.length, place.station));
    const distance = Math.hypot(place.offset, place.station - t);
    if (nearest && nearest.distance <= distance) continue;
    const [a, b] = endElevations(runway, field);
    nearest = { distance, elevation: a + ((b - a) * t) / place.length };
  }
  return nearest ? { elevation: nearest.elevation, from: 'runway' } : { elevation: field, from: 'site' };
}

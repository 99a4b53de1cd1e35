import type { Position } from '../../survey/document';
import type { Obstacle } from '../../survey/schema/places';
import { frameAt, mapped } from '../geometry/earth';
import { meshBeside } from '../practice';
import { outlineOf } from './outline';

/** A mesh fence that is looked through. */
export interface MeshAhead {
  readonly id: string;
  /** m along the ground from the spot to the fence's nearest point. */
  readonly distance: number;
  /** So near that the lens can be held to its wires. */
  readonly beside: boolean;
}

export function meshAhead(from: Position, obstacle: Obstacle): MeshAhead {
  const distance = distanceTo(from, obstacle);
  return { id: obstacle.id, distance, beside: distance <= meshBeside };
}

/** m along the ground to the nearest point of an obstacle's line or outline. */
function distanceTo(from: Position, obstacle: Obstacle): number {
  const frame = frameAt(from);
  let nearest = Infinity;
  for (const chain of outlineOf(obstacle).chains) {
    let before: readonly [number, number] | null = null;
    for (const vertex of chain) {
      const at = mapped(frame, vertex);
      nearest = Math.min(nearest, toPiece(before ?? at, at));
      before = at;
    }
  }
  return nearest;
}

/** Distance of the origin from the straight line between two places. */
function toPiece([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number {
  const [dx, dy] = [bx - ax, by - ay];
  const squared = dx * dx + dy * dy;
  const t = squared > 0 ? Math.max(0, Math.min(1, -(ax * dx + ay * dy) / squared)) : 0;
  return Math.hypot(ax + t * dx, ay + t * dy);
}

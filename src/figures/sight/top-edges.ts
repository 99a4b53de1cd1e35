import type { Position } from '../../survey/document';
import type { Obstacle } from '../../survey/schema/places';
import type { Runway } from '../../survey/schema/runway';
import { sightOf } from '../../survey/schema/sights';
import { mapped, type Frame } from '../geometry/earth';
import { inPieces } from '../geometry/in-pieces';
import { groundAt } from './ground';
import { outlineOf } from './outline';
import type { Terrain } from './terrain';

/** Numbers of one edge in `TopEdges`: east, north and top of its two ends. */
export const perEdge = 6;

/** The upper edges of an obstacle in the site frame. What is hidden is hidden behind one of them. */
export interface TopEdges {
  /** `perEdge` numbers an edge: east and north in m, top in m above mean sea level, of either end. */
  readonly edges: Float64Array;
  readonly count: number;
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
  readonly top: number;
  /** Whether the edges go round an inside. */
  readonly closed: boolean;
  /** m from the top down to the underside, below which one sees through; Infinity for what hides down to its foot and on. */
  readonly depth: number;
}

/**
 * Everything from an obstacle's top down hides, its foot included, or down to its underside. It stands on its stated base, else on the ground:
 * a block (solid or mesh polygon) with a flat top over its lowest corner, as heights of buildings are measured; a line
 * and a wood follow the ground.
 */
export function topEdges(
  obstacle: Obstacle,
  frame: Frame,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null,
): TopEdges {
  const { chains: outline, closed } = outlineOf(obstacle);
  const flat = obstacle.rings.length > 0 && sightOf(obstacle.sight).level;
  const depth = obstacle.underside > 0 ? obstacle.height - obstacle.underside : Infinity;
  const step = terrain && !flat && obstacle.base === null ? terrain.step : Infinity;
  const chains = outline.map((chain) => inPieces(chain, frame, step));
  const ground = (position: Position) =>
    obstacle.base ?? groundAt(position, runways, field, terrain).elevation;
  const feet = chains.map((chain) => chain.map(ground));
  const lowest = Math.min(...feet.map((chain) => Math.min(...chain)));
  const count = chains.reduce((sum, chain) => sum + Math.max(0, chain.length - 1), 0);
  const edges = new Float64Array(count * perEdge);
  let [west, south, east, north, top] = [Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  let k = 0;
  chains.forEach((chain, c) => {
    let before: readonly [number, number, number] | null = null;
    chain.forEach((position, i) => {
      const [x, y] = mapped(frame, position);
      const z = (flat ? lowest : (feet[c]?.[i] ?? lowest)) + obstacle.height;
      west = Math.min(west, x);
      east = Math.max(east, x);
      south = Math.min(south, y);
      north = Math.max(north, y);
      top = Math.max(top, z);
      if (before) {
        edges.set([...before, x, y, z], k);
        k += perEdge;
      }
      before = [x, y, z];
    });
  });
  return { edges, count, west, south, east, north, top, closed, depth };
}

/** Whether a place of the site frame lies inside the edges, holes left out: even or odd crossings. */
export function isWithin({ edges, count }: TopEdges, x: number, y: number): boolean {
  let inside = false;
  for (let k = 0; k < count * perEdge; k += perEdge) {
    const [x0, y0] = [edges[k] as number, edges[k + 1] as number];
    const [x1, y1] = [edges[k + 3] as number, edges[k + 4] as number];
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) * (x1 - x0)) / (y1 - y0)) inside = !inside;
  }
  return inside;
}

import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { polygon } from '@turf/helpers';
import type { Feature, Polygon } from 'geojson';
import type { Position } from '../../survey/document';
import { mapped, type Frame } from '../../figures/geometry/earth';

/** A line or an area in m of the site frame. Whether a place is inside is Turf's word, how far away it is is ours. */
export interface Shape {
  readonly chains: readonly (readonly (readonly [x: number, y: number])[])[];
  /** Null for a line. */
  readonly area: Feature<Polygon> | null;
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

export function shapeOf(
  frame: Frame,
  {
    rings = [],
    line = [],
  }: { readonly rings?: readonly (readonly Position[])[]; readonly line?: readonly Position[] },
): Shape | null {
  const chains = (rings.length > 0 ? rings : [line]).map((chain) => chain.map((p) => mapped(frame, p)));
  if (!chains[0]?.length) return null;
  return shapeIn(chains, rings.length > 0);
}

/** The same from places of the frame. */
export function shapeIn(chains: Shape['chains'], closed: boolean): Shape {
  const xs = chains.flatMap((chain) => chain.map(([x]) => x));
  const ys = chains.flatMap((chain) => chain.map(([, y]) => y));
  return {
    chains,
    area: closed ? polygon(chains.map((chain) => chain.map(([x, y]) => [x, y]))) : null,
    west: Math.min(...xs),
    south: Math.min(...ys),
    east: Math.max(...xs),
    north: Math.max(...ys),
  };
}

/** Whether a place is inside an area, or no farther than `within` m from it or from a line. */
export function isNear(shape: Shape, x: number, y: number, within: number): boolean {
  const { west, south, east, north, area, chains } = shape;
  if (x < west - within || x > east + within || y < south - within || y > north + within) return false;
  if (area && booleanPointInPolygon([x, y], area)) return true;
  return chains.some((chain) => toChain(chain, x, y) <= within);
}

/** m from a place to a chain of straight pieces. */
export function toChain(chain: readonly (readonly [number, number])[], x: number, y: number): number {
  let least = Infinity;
  for (let i = 0; i < chain.length; i++) {
    const [bx, by] = chain[i] as readonly [number, number];
    const [ax, ay] = chain[Math.max(0, i - 1)] as readonly [number, number];
    const [dx, dy] = [bx - ax, by - ay];
    const squared = dx * dx + dy * dy;
    const t = squared > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / squared)) : 0;
    least = Math.min(least, Math.hypot(ax + t * dx - x, ay + t * dy - y));
  }
  return least;
}

/** Whether any part of a square about (`x`, `y`), `half` m to each side, is no farther than `within` from a shape. */
export function meetsSquare(shape: Shape, x: number, y: number, half: number, within: number): boolean {
  const { west, south, east, north } = shape;
  const far = half + within;
  if (x < west - far || x > east + far || y < south - far || y > north + far) return false;
  // Nearer than the square's inner circle, or farther than its outer one: no need to look at its corners.
  if (isNear(shape, x, y, far)) {
    if (isNear(shape, x, y, half) || withinSquare(shape, x, y, half, within)) return true;
  } else if (!isNear(shape, x, y, half * Math.SQRT2 + within)) return false;
  return withinSquare(shape, x, y, half, within);
}

/** The same exactly: the least distance of the shape's pieces from the square. */
function withinSquare({ chains }: Shape, x: number, y: number, half: number, within: number): boolean {
  const outside = (px: number, py: number) =>
    Math.hypot(Math.max(0, Math.abs(px - x) - half), Math.max(0, Math.abs(py - y) - half));
  return chains.some((chain) =>
    chain.some((b, i) => {
      const a = chain[Math.max(0, i - 1)] as readonly [number, number];
      // The distance from a convex square is convex along a straight piece: halve the thirds.
      let [low, high] = [0, 1];
      const at = (t: number) => outside(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t);
      for (let step = 0; step < 40; step++) {
        const [m1, m2] = [low + (high - low) / 3, high - (high - low) / 3];
        if (at(m1) <= at(m2)) high = m2;
        else low = m1;
      }
      return at((low + high) / 2) <= within + 1e-9;
    }),
  );
}

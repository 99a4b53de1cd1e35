import { RAD } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';

/**
 * A closed ring with as few of its positions as keep within `tolerance` degrees of latitude (or as much on the
 * ground in longitude) of what is left out: Douglas and Peucker (1973), from the first position and the one
 * farthest from it. Fewer than four positions are no ring any more: null.
 */
export function simplifyRing(ring: readonly Position[], tolerance: number): Position[] | null {
  const [first] = ring;
  if (!first) return null;
  const distances = ring.map((position) => Math.hypot(position[0] - first[0], position[1] - first[1]));
  const farthest = distances.indexOf(Math.max(...distances));
  const kept = new Set([0, farthest, ring.length - 1]);
  const stretches = [
    [0, farthest],
    [farthest, ring.length - 1],
  ] as [number, number][];
  for (let stretch = stretches.pop(); stretch; stretch = stretches.pop()) {
    const [from, to] = stretch;
    const middle = outermost(ring, from, to, tolerance);
    if (middle === null) continue;
    kept.add(middle);
    stretches.push([from, middle], [middle, to]);
  }
  const left = ring.filter((_, i) => kept.has(i));
  return left.length < 4 ? null : left;
}

/** The position between two others that lies farthest from the line between them, if it lies too far. */
function outermost(ring: readonly Position[], from: number, to: number, tolerance: number): number | null {
  const [a, b] = [ring[from], ring[to]];
  if (!a || !b) return null;
  // A degree of longitude is worth less towards the poles; near them it is still worth something.
  const k = Math.max(Math.cos(a[1] * RAD), 0.2);
  const [dx, dy] = [(b[0] - a[0]) * k, b[1] - a[1]];
  const length = Math.hypot(dx, dy);
  let [index, most]: [number | null, number] = [null, tolerance];
  for (let i = from + 1; i < to; i++) {
    const [lng, lat] = ring[i] ?? a;
    const [x, y] = [(lng - a[0]) * k, lat - a[1]];
    const off = length === 0 ? Math.hypot(x, y) : Math.abs(dx * y - dy * x) / length;
    if (off > most) [index, most] = [i, off];
  }
  return index;
}

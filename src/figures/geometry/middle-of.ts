import type { Position } from '../../survey/document';
import { frameAt, mapped, placed, positionOf } from './earth';

/**
 * A place inside an area, in its middle where that makes sense: the centroid, or, where that lies outside (an L), the
 * middle of the widest stretch of the area on the centroid's parallel. Null for an area without extent.
 */
export function middleOf(ring: readonly Position[]): Position | null {
  const [first] = ring;
  if (!first) return null;
  const frame = frameAt(first);
  const corners = ring.map((position) => mapped(frame, position));
  let [area, x, y] = [0, 0, 0];
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length] ?? [x1, y1];
    const cross = x0 * y1 - x1 * y0;
    area += cross / 2;
    x += ((x0 + x1) * cross) / 6;
    y += ((y0 + y1) * cross) / 6;
  }
  if (Math.abs(area) < 1) return null;
  const [cx, cy] = [x / area, y / area];
  const stretches = crossings(corners, cy);
  const around = stretches.find(([from, to]) => from <= cx && cx <= to);
  const widest = stretches.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a), stretches[0] ?? [cx, cx]);
  return positionOf(placed(frame, around ? cx : (widest[0] + widest[1]) / 2, cy, 0));
}

/** The stretches inside a ring along the line at `y`, from west to east. */
function crossings(corners: readonly (readonly [number, number])[], y: number): [number, number][] {
  const at: number[] = [];
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length] ?? [x1, y1];
    if (y0 > y !== y1 > y) at.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
  }
  at.sort((a, b) => a - b);
  const out: [number, number][] = [];
  for (let i = 0; i + 1 < at.length; i += 2) out.push([at[i] as number, at[i + 1] as number]);
  return out;
}

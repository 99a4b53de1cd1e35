import type { Position } from '../../survey/document';
import { RAD } from '../../figures/geometry/angles';

/** m to a degree of latitude, near enough for a tolerance. */
const degree = 111_000;

/**
 * A line with only the positions that its shape needs: none of those left out lies more than `tolerance` m beside it (Douglas
 * and Peucker 1973, in a plane of its own; without recursion, since a track of a day is as deep as it is long).
 */
export function thinnedLine(line: readonly Position[], tolerance: number): readonly Position[] {
  const [first] = line;
  if (!first || line.length < 3) return line;
  const east = degree * Math.cos(first[1] * RAD);
  // Plain loops: a season is half a million positions.
  const [x, y] = [new Float64Array(line.length), new Float64Array(line.length)];
  for (let i = 0; i < line.length; i++) {
    const position = line[i] as Position;
    x[i] = (position[0] - first[0]) * east;
    y[i] = (position[1] - first[1]) * degree;
  }
  const kept = new Uint8Array(line.length);
  kept[0] = kept[line.length - 1] = 1;
  const open: (readonly [from: number, to: number])[] = [[0, line.length - 1]];
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const [from, to] = stretch;
    const far = farthest(x, y, from, to, tolerance);
    if (far === null) continue;
    kept[far] = 1;
    open.push([from, far], [far, to]);
  }
  return line.filter((_, i) => kept[i] === 1);
}

/** The position between two that lies farthest from the stretch between them; null when none is beyond the tolerance. */
function farthest(
  x: Float64Array,
  y: Float64Array,
  from: number,
  to: number,
  tolerance: number,
): number | null {
  const [x0, y0] = [x[from] as number, y[from] as number];
  const [dx, dy] = [(x[to] as number) - x0, (y[to] as number) - y0];
  const square = dx * dx + dy * dy;
  let most = tolerance * tolerance;
  let far: number | null = null;
  for (let i = from + 1; i < to; i++) {
    const px = (x[i] as number) - x0;
    const py = (y[i] as number) - y0;
    const t = square > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / square)) : 0;
    const aside = (px - t * dx) ** 2 + (py - t * dy) ** 2;
    if (aside <= most) continue;
    most = aside;
    far = i;
  }
  return far;
}

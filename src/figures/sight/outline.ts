import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import type { Obstacle } from '../../survey/schema/places';
import { sightOf } from '../../survey/schema/sights';
import { frameAt, mapped, placed, positionOf } from '../geometry/earth';

/** Corners of an obstacle's outline; of a line without width the line itself. */
export interface Outline {
  readonly chains: readonly (readonly Position[])[];
  /** Whether the chains come back to where they begin, so that there is an inside. */
  readonly closed: boolean;
}

/** How far a sharp corner may reach, in half widths: beyond it the outline would grow a spike. */
const longestCorner = 3;

const kept = new Memo<Outline>();

/** Areas are what they are; a line with a width, its own or that of its sort, is a band that goes round it. */
export const outlineOf = (obstacle: Obstacle): Outline => kept.get([obstacle], () => outlined(obstacle));

function outlined({ rings, line, width, sight }: Obstacle): Outline {
  if (rings.length > 0) return { chains: rings, closed: true };
  const across = width ?? sightOf(sight).width;
  const band = across > 0 ? bandRound(line, across) : null;
  return band ? { chains: [band], closed: true } : { chains: [line], closed: false };
}

/** The closed band of a width in m round a line: one side there, the other back. Null where the line has no length. */
function bandRound(line: readonly Position[], width: number): readonly Position[] | null {
  const [first] = line;
  if (!first) return null;
  const frame = frameAt(first);
  const points: (readonly [number, number])[] = [];
  for (const [x, y] of line.map((position) => mapped(frame, position))) {
    const last = points.at(-1);
    if (!last || Math.hypot(x - last[0], y - last[1]) > 0.01) points.push([x, y]);
  }
  if (points.length < 2) return null;
  // Unit vectors to the left of each leg.
  const lefts = points.slice(1).map(([x, y], i) => {
    const [x0, y0] = points[i] as readonly [number, number];
    const length = Math.hypot(x - x0, y - y0);
    return [-(y - y0) / length, (x - x0) / length] as const;
  });
  const edge = (half: number) =>
    points.map(([x, y], i) => {
      const [ax, ay] = (lefts[i - 1] ?? lefts[i]) as readonly [number, number];
      const [bx, by] = (lefts[i] ?? lefts[i - 1]) as readonly [number, number];
      const [sx, sy] = [ax + bx, ay + by];
      // The corner lies on the line that halves the angle, farther out the sharper it is.
      const squared = sx * sx + sy * sy;
      const out = squared > 0 ? Math.min(2 / squared, longestCorner / Math.sqrt(squared)) : 0;
      return positionOf(placed(frame, x + half * out * sx, y + half * out * sy, 0));
    });
  const left = edge(width / 2);
  return [...left, ...edge(-width / 2).reverse(), left[0] as Position];
}

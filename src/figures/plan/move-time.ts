import type { Position } from '../../survey/document';
import type { Runway } from '../../survey/schema/runway';
import { frameAt, mapped } from '../geometry/earth';
import { detour, driveFrom, drivingSpeed, parkingMinutes, roundRunwayEnd, walkingSpeed } from '../practice';

/** How long it takes from one spot to another. */
export interface MoveTime {
  readonly minutes: number;
  readonly by: 'foot' | 'car' | 'stated';
  /** m of the way, to 10 m: an estimate as well. */
  readonly metres: number;
}

type Point = readonly [x: number, y: number];

/**
 * An estimate in whole minutes (common practice, no source): the straight line, round the nearer end of every runway
 * that it crosses, a third longer; on foot, or from 1.5 km on by car. Knows no roads: the user's own word goes first.
 */
export function estimatedMove(a: Position, b: Position, runways: readonly Runway[]): MoveTime {
  const frame = frameAt(a);
  const [from, to]: readonly Point[] = [mapped(frame, a), mapped(frame, b)];
  if (!from || !to) throw new Error('expected two points');
  let way = apart(from, to);
  for (const { line } of runways) {
    const [p, q] = [mapped(frame, line[0]), mapped(frame, line[1])];
    if (!crosses(from, to, p, q)) continue;
    const round = [beyond(q, p), beyond(p, q)].map((end) => apart(from, end) + apart(end, to));
    way = Math.max(way, Math.min(...round));
  }
  way *= detour;
  const by = way < driveFrom ? 'foot' : 'car';
  const minutes = by === 'foot' ? way / walkingSpeed / 60 : way / drivingSpeed / 60 + parkingMinutes;
  return { minutes: Math.max(1, Math.round(minutes)), by, metres: Math.round(way / 10) * 10 };
}

const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The place where one gets round the end `q` of a runway from `p`. */
function beyond(p: Point, q: Point): Point {
  const length = apart(p, q) || 1;
  const share = roundRunwayEnd / length;
  return [q[0] + (q[0] - p[0]) * share, q[1] + (q[1] - p[1]) * share];
}

/** Whether two stretches cross. */
function crosses(a: Point, b: Point, p: Point, q: Point): boolean {
  const side = (o: Point, d: Point, x: Point) =>
    (d[0] - o[0]) * (x[1] - o[1]) - (d[1] - o[1]) * (x[0] - o[0]);
  return side(a, b, p) * side(a, b, q) < 0 && side(p, q, a) * side(p, q, b) < 0;
}

import type { Position } from '../../../survey/document';
import { DEG, RAD, wrap180 } from '../../geometry/angles';
import { frameAt, mapped } from '../../geometry/earth';
import { turnRadius } from '../turn-physics';
import type { Plane } from './on-track';
import { trackOf, type Step, type Track } from './track';

/** A path through waypoints, rounded: in the plane of its first one, ahead being its first leg. */
export interface Rounded {
  readonly plane: Plane;
  readonly track: Track;
  /** m along the track abeam each waypoint: half way through its turn. */
  readonly abeam: readonly number[];
}

/** Legs shorter than this in m are none: a waypoint that is typed twice. */
const shortestLeg = 1;
/** Share of a leg that one turn may take at each of its ends. */
const half = 0.5;
/** Degrees of turn up to which one flies straight on, and beyond which no arc joins the legs: they are flown as one sharp turn. */
const straightWithin = 0.01;
const sharpest = 170;

/**
 * Waypoints joined as aircraft fly by them: straight legs, and arcs that touch both legs of a corner, of the radius that
 * the speed (m/s) and the bank (degrees) make; tighter where a leg is too short for that. Null without two different
 * places. A plane holds over the tens of km of an approach: 50 km off it is wrong by half a metre.
 */
export function roundedTrack(line: readonly Position[], speed: number, bank: number): Rounded | null {
  const [first] = line;
  if (!first) return null;
  const frame = frameAt(first);
  const points = line.map((position) => mapped(frame, position));
  const [x1, y1] = points.find(([x, y]) => Math.hypot(x, y) >= shortestLeg) ?? [0, 0];
  const away = Math.hypot(x1, y1);
  if (away < shortestLeg) return null;
  const [east, north] = [x1 / away, y1 / away];
  const usual = turnRadius(speed, bank);
  const steps: Step[] = [];
  const abeam: number[] = [0];
  let [way, cut] = [0, 0];
  for (let i = 1; i < points.length; i++) {
    const leg = legBetween(points, i - 1);
    if (leg.length < shortestLeg) {
      abeam.push(way);
      continue;
    }
    const next = nextLeg(points, i);
    // Degrees, positive to the left.
    const turn = next ? wrap180(leg.bearing - next.bearing) : 0;
    const tangent = Math.tan((Math.min(Math.abs(turn), sharpest) * RAD) / 2);
    const room = next ? half * Math.min(leg.length, next.length) : 0;
    const radius = Math.abs(turn) > straightWithin ? Math.min(usual, room / tangent) : 0;
    const ahead = leg.length - cut - radius * tangent;
    steps.push({ ahead });
    way += Math.max(0, ahead);
    const arc = Math.abs(turn) * RAD * radius;
    abeam.push(way + arc / 2);
    if (radius > 0) steps.push({ turn, radius });
    way += arc;
    cut = radius * tangent;
  }
  const plane = { frame, x: 0, y: 0, east, north };
  return { plane, track: trackOf({ u: 0, v: 0, du: 1, dv: 0 }, steps), abeam };
}

type Point = readonly [number, number];

function legBetween(points: readonly Point[], i: number) {
  const [[x0, y0], [x1, y1]] = [points[i] as Point, points[i + 1] as Point];
  return { length: Math.hypot(x1 - x0, y1 - y0), bearing: Math.atan2(x1 - x0, y1 - y0) * DEG };
}

/** The next leg with a length from a waypoint on. */
function nextLeg(points: readonly Point[], from: number) {
  for (let i = from; i + 1 < points.length; i++) {
    const leg = legBetween(points, i);
    if (leg.length >= shortestLeg) return leg;
  }
  return null;
}

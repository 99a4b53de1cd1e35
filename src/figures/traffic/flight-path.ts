import type { Position } from '../../survey/document';
import type { FlightPath } from '../../survey/schema/places';
import type { Subject } from '../../survey/schema/subject';
import { earthCentred, frameAt, groundLine, minus, placed, mapped, type Vec3 } from '../geometry/earth';
import { noseAttitudeOf } from './nose-attitude';
import { recordedSpeeds } from './recorded-speeds';
import { levelled, sampled, stationsBetween, type PathSamples, type SampleState } from './samples';

/** A line with heights in m above mean sea level of the aircraft's centre, one a position. */
export interface Course {
  readonly line: readonly Position[];
  readonly heights: readonly number[];
}

/**
 * A drawn or recorded path; stations in m from its first vertex. Drawn heights are those of the wheels, recorded
 * ones those of the centre. Null when it has no length. `datum`: m above mean sea level that heights count from.
 */
export function flightPathSamples(path: FlightPath, subject: Subject, datum: number): PathSamples | null {
  const lift = path.source === 'drawn' ? subject.height / 2 : 0;
  const course = { line: path.line, heights: path.heights.map((height) => height + lift) };
  // How fast a drawn path is flown is the subject's word, a recorded one its own: without times nobody knows.
  const speeds = path.source === 'drawn' ? null : recordedSpeeds(path.line, path.times ?? []);
  return courseSamples(course, datum, (slope, leg) => ({
    attitude: noseAttitudeOf(subject, slope),
    onGround: false,
    speed: speeds ? (speeds[leg] ?? NaN) : slope > 0 ? subject.climbSpeed : subject.approachSpeed,
  }));
}

/** Samples along a course; `moving` says how the aircraft moves on a leg that rises by `slope`. Null without length. */
export function courseSamples(
  { line, heights }: Course,
  datum: number,
  moving: (slope: number, leg: number) => Pick<SampleState, 'attitude' | 'speed' | 'onGround'>,
): PathSamples | null {
  const legs = legsOf(line);
  const last = legs.at(-1);
  if (!last) return null;
  // Stations grow, so the leg is never before the last one's: a recorded track has thousands of them.
  let at = 0;
  return sampled(stationsBetween(0, last.to), (station) => {
    while (at < legs.length - 1 && station > (legs[at] ?? last).to) at++;
    const leg = legs[at] ?? last;
    const length = leg.to - leg.from;
    const t = (station - leg.from) / length;
    const [h0, h1] = [heights[leg.index] as number, heights[leg.index + 1] as number];
    const height = h0 + (h1 - h0) * t;
    const slope = (h1 - h0) / length;
    const up = levelUp(leg, t);
    return {
      centre: placed(leg.frame, leg.x * t, leg.y * t, height),
      up,
      forward: levelled(leg.direction, up),
      slope,
      height: height - datum,
      ...moving(slope, leg.index),
    };
  });
}

interface Leg {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly frame: ReturnType<typeof frameAt>;
  /** East and north in m of the leg's end in its frame. */
  readonly x: number;
  readonly y: number;
  readonly direction: Vec3;
}

/** Legs between vertices that differ, with stations along the ground. */
function legsOf(line: readonly Position[]): Leg[] {
  const legs: Leg[] = [];
  let from = 0;
  for (let index = 0; index + 1 < line.length; index++) {
    const [a, b] = [line[index] as Position, line[index + 1] as Position];
    const { distance } = groundLine(a, b);
    if (distance < 1e-3) continue;
    const frame = frameAt(a);
    const [x, y] = mapped(frame, b);
    legs.push({
      index,
      from,
      to: from + distance,
      frame,
      x,
      y,
      direction: minus(earthCentred(b, 0), frame.origin),
    });
    from += distance;
  }
  return legs;
}

function levelUp({ frame, x, y }: Leg, t: number): Vec3 {
  const low = placed(frame, x * t, y * t, 0);
  return minus(placed(frame, x * t, y * t, 1), low);
}

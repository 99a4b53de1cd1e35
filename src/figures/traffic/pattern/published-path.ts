import type { FlightPath } from '../../../survey/schema/places';
import type { Subject } from '../../../survey/schema/subject';
import { circuitBank } from '../../practice';
import { flightAttitude } from '../nose-attitude';
import type { PathSamples } from '../samples';
import { passSamples } from './passing';
import { roundedTrack } from './rounded';

/** m beyond which waypoints belong to no approach. */
const longestRounded = 150_000;

/**
 * A drawn path flown by its waypoints, rounded by bank and speed, at heights that change evenly from one waypoint to the
 * next. Banked turns are flown at the approach speed, a path that climbs from end to end at the climb's.
 */
export function roundedSamples(
  { line, heights, turnBank }: FlightPath,
  subject: Subject,
  datum: number,
): PathSamples | null {
  const climbs = (heights.at(-1) ?? 0) > (heights[0] ?? 0);
  const speed = climbs ? subject.climbSpeed : subject.approachSpeed;
  const rounded = roundedTrack(line, speed, turnBank ?? circuitBank);
  if (!rounded || rounded.track.length > longestRounded) return null;
  const { plane, track, abeam } = rounded;
  const heightAt = (way: number) => {
    const next = abeam.findIndex((at) => at > way);
    const i = next === -1 ? abeam.length - 1 : Math.max(1, next);
    const [from, to] = [abeam[i - 1] ?? 0, abeam[i] ?? 0];
    const t = to > from ? Math.max(0, Math.min(1, (way - from) / (to - from))) : 1;
    const [h0, h1] = [heights[i - 1] ?? 0, heights[i] ?? 0];
    return h0 + (h1 - h0) * t + subject.height / 2;
  };
  return passSamples(plane, track, datum, {
    heightAt,
    speedAt: () => speed,
    attitudeAt: (slope) => flightAttitude(subject, slope, speed),
  });
}

import type { Helipad } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { RAD } from '../../geometry/angles';
import { frameAt, placed } from '../../geometry/earth';
import { hover } from '../../practice';
import { helicopterApproach, helipadRun, hoverRun } from './practice';
import { circuitHeight } from '../circuit';
import { noseAttitudeOf } from '../nose-attitude';
import { axesAt, sampled, type PathSamples } from '../samples';
import type { Plane } from './on-track';
import { passSamples } from './passing';
import { trackOf } from './track';

/** m/s at which a helicopter comes to stand over its point: of one that stands nobody could tell which way it came. */
const almostStanding = 1;

export const helipadPasses = ['approach', 'hover', 'departure'] as const;
export type HelipadPass = (typeof helipadPasses)[number];

/** `course`: degrees from true north into the wind, null where nobody knows. `ground`: m above mean sea level of the pad. */
export function helipadSamples(
  { position }: Helipad,
  pass: HelipadPass,
  course: number | null,
  subject: Subject,
  ground: number,
  field: number,
): PathSamples | null {
  const [east, north] = [Math.sin((course ?? 0) * RAD), Math.cos((course ?? 0) * RAD)];
  const plane: Plane = { frame: frameAt(position), x: 0, y: 0, east, north };
  const low = ground + hover.height + subject.height / 2;
  if (pass === 'hover') return hovering(plane, low, field, course !== null);
  // Coming or going from an unknown direction there is no path.
  if (course === null) return null;
  const top = ground + circuitHeight(subject) + subject.height / 2;
  const coming = pass === 'approach';
  const track = trackOf({ u: coming ? -helipadRun : 0, v: 0, du: 1, dv: 0 }, [{ ahead: helipadRun }]);
  const slope = Math.tan((subject.approachAngle ?? helicopterApproach) * RAD);
  const from = (way: number) => (coming ? helipadRun - way : way);
  const full = coming ? subject.approachSpeed : subject.climbSpeed;
  return passSamples(plane, track, field, {
    heightAt: (way) =>
      coming
        ? Math.min(top, low + slope * Math.max(0, from(way)))
        : Math.min(top, low + subject.climbGradient * Math.max(0, way - hoverRun / 2)),
    speedAt: (way) =>
      Math.max(almostStanding, full * Math.sqrt(Math.max(0, Math.min(1, from(way) / hoverRun)))),
    attitudeAt: (rise) => noseAttitudeOf(subject, rise),
  });
}

/** One sample at station 0. It stands for itself, so its share is 1, though it has no length. */
function hovering({ frame, east, north }: Plane, height: number, field: number, known: boolean): PathSamples {
  const samples = sampled(
    [0],
    () => ({
      centre: placed(frame, 0, 0, height),
      ...axesAt(frame, 0, 0, east, north),
      slope: 0,
      attitude: 0,
      height: height - field,
      speed: 0,
      onGround: false,
    }),
    known,
  );
  samples.share[0] = 1;
  return samples;
}

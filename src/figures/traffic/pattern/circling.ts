import type { Pattern } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { RAD } from '../../geometry/angles';
import { circlingShape } from './practice';
import { arrivalProfile } from '../arrival';
import type { EndGeometry } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { turnRadius } from '../turn-physics';
import { landingSamples } from './landing';
import { sideOf } from './side-of';
import { sinkToFinal } from './sink-to-final';
import { trackOf } from './track';

/** m of the approach to the other end that is looked at, before it is left for the downwind. */
const leadIn = 5000;
/** Degrees by which the approach is left. CP. */
const leave = 45;

/**
 * Down the approach of the runway's other end, off to the side by 45 degrees short of the field, and round by downwind
 * and base on to this end's final: circling at a level height until abeam the threshold.
 */
export function circlingSamples(
  geometry: EndGeometry,
  subject: Subject,
  field: number,
  pattern: Pattern,
): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const top = field + (pattern.height ?? circlingShape.height);
  const { abeam, bank } = circlingShape;
  const radius = Math.min(turnRadius(subject.approachSpeed, bank), abeam / 2);
  const side = sideOf(geometry, pattern);
  const [sin, cos] = [Math.sin(leave * RAD), Math.cos(leave * RAD)];
  const slant = (abeam - 2 * radius * (1 - cos)) / sin;
  const joins = 2 * radius * sin + slant * cos;
  const far = geometry.length - geometry.displaced;
  const final = abeam;
  const quarter = { turn: 90 * side, radius };
  const across = abeam - 2 * radius;
  const track = trackOf({ u: far + joins + leadIn, v: 0, du: -1, dv: 0 }, [
    { ahead: leadIn },
    { turn: -side * leave, radius },
    { ahead: slant },
    { turn: side * leave, radius },
    { ahead: far + final },
    quarter,
    { ahead: across },
    quarter,
    { ahead: final },
  ]);
  const sinking = sinkToFinal(profile, top, { from: final + Math.PI * radius + across + final, final });
  /** m still to fly where the other end's approach is left, from where it is level. */
  const leaves = track.length - leadIn;
  return landingSamples(geometry, subject, {
    track,
    wheelsAt: (toFly) => sinking(toFly) + profile.glideSlope * Math.max(0, toFly - leaves),
    speedAt: () => subject.approachSpeed,
  });
}

import type { Pattern } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { breakBank, breakRunIn, downwindSpeed, rollOut, streamInterval } from './practice';
import { arrivalProfile } from '../arrival';
import type { EndGeometry } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { turnRadius } from '../turn-physics';
import { landingSamples } from './landing';
import { sideOf } from './side-of';
import { sinkToFinal } from './sink-to-final';
import { trackOf } from './track';

/**
 * Initial and break: a fast run-in along the runway, a level half turn over the threshold that takes the speed off,
 * downwind, and a sinking half turn to a short final. Both turns have one radius, that of the stated bank at the
 * mean speed of the break: it begins steeper and ends flatter. `place`: which of a stream it is, from 0; each breaks its
 * interval after the one ahead, and so farther along.
 */
export function breakSamples(
  geometry: EndGeometry,
  subject: Subject,
  field: number,
  pattern: Pattern,
  place: number,
): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const top = field + (pattern.height ?? breakRunIn.height);
  const fast = pattern.speed ?? breakRunIn.speed;
  const slow = Math.min(downwindSpeed * subject.approachSpeed, fast);
  const radius = turnRadius((fast + slow) / 2, breakBank);
  const turn = { turn: 180 * sideOf(geometry, pattern), radius };
  const bend = Math.PI * radius;
  const breaks = fast * (pattern.interval ?? streamInterval) * place;
  const above = profile.wheelsAt(0) - geometry.thresholdElevation;
  const final = Math.max(rollOut.from, (rollOut.height - above) / profile.glideSlope);
  const track = trackOf({ u: -breakRunIn.from, v: 0, du: 1, dv: 0 }, [
    { ahead: breakRunIn.from + breaks },
    turn,
    { ahead: breaks + final },
    turn,
    { ahead: final },
  ]);
  /** m still to fly where the break begins. */
  const pitch = track.length - breakRunIn.from - breaks;
  return landingSamples(geometry, subject, {
    track,
    wheelsAt: sinkToFinal(profile, top, { from: final + bend, final }),
    speedAt: (toFly) => {
      if (toFly >= pitch) return fast;
      if (toFly >= pitch - bend) return slow + ((fast - slow) * (toFly - pitch + bend)) / bend;
      if (toFly >= final + bend) return slow;
      return (
        subject.approachSpeed +
        (slow - subject.approachSpeed) * Math.max(0, Math.min(1, (toFly - final) / bend))
      );
    },
  });
}

import type { Pattern } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { RAD } from '../../geometry/angles';
import { circuitBank } from '../../practice';
import { offsetLocalizer } from './practice';
import { arrivalBegins, arrivalProfile } from '../arrival';
import type { EndGeometry } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { turnRadius } from '../turn-physics';
import { landingSamples } from './landing';
import { sideOf } from './side-of';
import { trackOf } from './track';

/**
 * An approach on a localizer that is turned off the runway: straight in at an angle, and round on to the
 * centreline where the two meet. It comes in on the pattern's side. The glide path is the end's.
 */
export function offsetSamples(
  geometry: EndGeometry,
  subject: Subject,
  _field: number,
  pattern: Pattern,
): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const offset = pattern.offset ?? offsetLocalizer.offset;
  const meets = pattern.meets ?? offsetLocalizer.meets;
  const side = sideOf(geometry, pattern);
  const radius = turnRadius(subject.approachSpeed, circuitBank);
  /** m from where the turn begins and ends to where the two lines meet. */
  const cut = Math.min(radius * Math.tan((offset * RAD) / 2), meets);
  const [sin, cos] = [Math.sin(offset * RAD), Math.cos(offset * RAD)];
  const straight = arrivalBegins - meets - cut;
  const begin = {
    u: -meets - (straight + cut) * cos,
    // To the left of the approach, towards the runway: from the side on which it comes in.
    v: side * (straight + cut) * sin,
    du: cos,
    dv: -side * sin,
  };
  const track = trackOf(begin, [
    { ahead: straight },
    { turn: side * offset, radius: offset > 0 ? cut / Math.tan((offset * RAD) / 2) : radius },
    { ahead: meets - cut },
  ]);
  return landingSamples(geometry, subject, {
    track,
    wheelsAt: profile.wheelsAt,
    speedAt: () => subject.approachSpeed,
  });
}

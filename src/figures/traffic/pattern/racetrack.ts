import type { Pattern } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { arrivalProfile } from '../arrival';
import type { EndGeometry } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { turnRadius } from '../turn-physics';
import { landingSamples } from './landing';
import { sideOf } from './side-of';
import { sinkToFinal } from './sink-to-final';
import { trackOf } from './track';

/** How high, how wide and how steeply banked: m above the field, m abeam, degrees. */
export interface Shape {
  readonly height: number;
  readonly abeam: number;
  readonly bank: number;
}

/**
 * Over the runway at the pattern's height, round by two quarter turns or one half turn on to the downwind, from abeam the
 * threshold down to the glide path on final. Which turns there is room for, the bank and the speed say.
 */
export function racetrackSamples(
  geometry: EndGeometry,
  subject: Subject,
  field: number,
  pattern: Pattern,
  shape: Shape,
): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const top = field + (pattern.height ?? shape.height);
  const { abeam } = shape;
  const radius = Math.min(turnRadius(subject.approachSpeed, shape.bank), abeam / 2);
  const across = abeam - 2 * radius;
  const quarter = { turn: 90 * sideOf(geometry, pattern), radius };
  const out = geometry.length - geometry.displaced;
  // The base turn begins where the threshold is 45 degrees behind; final is as long as the downwind is wide.
  const final = abeam;
  const track = trackOf({ u: 0, v: 0, du: 1, dv: 0 }, [
    { ahead: out },
    quarter,
    { ahead: across },
    quarter,
    { ahead: out + final },
    quarter,
    { ahead: across },
    quarter,
    { ahead: final },
  ]);
  /** m still to fly abeam the threshold, from where it sinks. */
  const from = final + Math.PI * radius + across + final;
  return landingSamples(geometry, subject, {
    track,
    wheelsAt: sinkToFinal(profile, top, { from, final }),
    speedAt: () => subject.approachSpeed,
  });
}

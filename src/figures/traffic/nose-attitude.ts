import type { Subject } from '../../survey/schema/subject';
import { DEG, RAD } from '../geometry/angles';
import { noseAttitude } from '../practice';

/** Nose attitude in degrees of a subject in the air on a path that rises by `slope`: its own word, else what is usual. */
export const noseAttitudeOf = (subject: Subject, slope: number): number =>
  slope > 0
    ? (subject.climbAttitude ?? noseAttitude.climb)
    : (subject.approachAttitude ?? noseAttitude.approach);

/** Degrees of the usual glide path, on which the attitude of an approach is held. */
const usualGlide = 3;

/**
 * Nose attitude in degrees at a speed in m/s on a path that rises by `slope`: the angle of the path and that of the wing
 * to the air, which lift asks for with one over the square of the speed. At the approach speed it is the
 * approach's on a path of 3 degrees. In a level turn lift grows by one over the cosine of the bank, and of the wing's
 * angle that cosine stands upright, so the nose stays where it was; that it also turns into the bend is left out.
 * Rotors lean with their speed: theirs is the subject's own.
 */
export function flightAttitude(subject: Subject, slope: number, speed: number): number {
  if (subject.propulsion === 'rotor') return noseAttitudeOf(subject, slope);
  const onApproach = noseAttitudeOf(subject, -Math.tan(usualGlide * RAD)) + usualGlide;
  return Math.atan(slope) * DEG + onApproach * (subject.approachSpeed / speed) ** 2;
}

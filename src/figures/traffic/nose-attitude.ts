import type { Subject } from '../../survey/schema/subject';
import { noseAttitude } from '../practice';

/** Nose attitude in degrees of a subject in the air on a path that rises by `slope`: its own word, else what is usual. */
export const noseAttitudeOf = (subject: Subject, slope: number): number =>
  slope > 0
    ? (subject.climbAttitude ?? noseAttitude.climb)
    : (subject.approachAttitude ?? noseAttitude.approach);

import type { Subject } from '../schema/subject';
import { starterSubjects } from './subjects';

/** The figures of a subject that say how it flies: without one of them an entry is still an aircraft. */
export const performance = [
  'approachSpeed',
  'climbSpeed',
  'groundRun',
  'landingRun',
  'climbGradient',
] as const;
export type Performance = (typeof performance)[number];

/** The starter subject of a propulsion whose span in m is nearest in proportion: its figures stand in for unknown ones. CP. */
export function likeSize(propulsion: Subject['propulsion'], span: number): Subject {
  const apart = (subject: Subject) => Math.abs(Math.log(subject.span / span));
  const alike = starterSubjects.filter((subject) => subject.propulsion === propulsion);
  return alike.reduce((best, subject) => (apart(subject) < apart(best) ? subject : best));
}

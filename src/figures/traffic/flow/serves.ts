import type { Subject } from '../../../survey/schema/subject';
import { RAD } from '../../geometry/angles';
import { lightSpan } from '../../practice';
import { endName } from '../end-name';
import type { EndGeometry } from '../runway-geometry';
import { surfaceOf } from '../surface';

/** Whether a subject is a light aircraft: no jet, and of small span. */
export const isLight = ({ propulsion, span }: Pick<Subject, 'propulsion' | 'span'>): boolean =>
  propulsion !== 'jet' && span < lightSpan;

export const metres = (m: number): string => `${String(Math.round(m)).replace(/\B(?=(\d{3})+$)/g, ',')} m`;

/** m that a landing takes from the landing threshold on: down the glide path from the crossing height, then the run. */
export function landingDistance(
  { runway, end }: Pick<EndGeometry, 'runway' | 'end'>,
  subject: Subject,
): number {
  const glide = subject.approachAngle ?? runway.ends[end].glide;
  const crossing = subject.crossingHeight ?? runway.ends[end].crossingHeight;
  return crossing / Math.tan(glide * RAD) + subject.landingRun;
}

/** Why an end does not serve a subject, whatever the wind, in words; null where it does. */
export function againstEnd(geometry: EndGeometry, subject: Subject): string | null {
  const { runway, end, length, displaced } = geometry;
  const name = endName(runway, end);
  const what = subject.name || subject.key;
  if (runway.ends[end].closed) return `${name} is closed`;
  if (length < subject.groundRun)
    return `${name} is too short for ${what} to take off (${metres(length)} of ${metres(subject.groundRun)})`;
  const [there, needed] = [length - displaced, landingDistance(geometry, subject)];
  if (there < needed)
    return `${name} is too short for ${what} to land (${metres(there)} of ${metres(needed)})`;
  const surface = surfaceOf(runway.surface);
  if (surface === 'water' && !subject.seaplane) return `${name} is on water, and ${what} is no seaplane`;
  return surface === 'unpaved' && subject.propulsion === 'jet'
    ? `${name} is not paved (${runway.surface}), and ${what} is a jet`
    : null;
}

import { findTypes } from '../figures/movements/find-types';
import { nearestClass } from '../figures/movements/nearest-class';
import type { AircraftType } from '../survey/starter/aircraft-types';
import type { Subject } from '../survey/schema/subject';

/** Types of aircraft that people call so, the best match first. Loaded late: the list of types is long. */
export const typesCalled = (words: string): AircraftType[] =>
  words.trim() === '' ? [] : findTypes(words, 12);

/** The subject of a survey that comes nearest to a type, to be offered; null where nobody can tell. */
export function nearestTo(type: string, subjects: readonly Subject[]): Subject | null {
  const key = nearestClass(type, subjects);
  return subjects.find((subject) => subject.key === key) ?? null;
}

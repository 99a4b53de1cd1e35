import type { Subject } from '../../survey/schema/subject';
import { typeNamed } from './find-types';

/** The subject that words mean: the survey's own by its key, else that of a type known by name; null for none. */
export const subjectNamed = (words: string, subjects: readonly Subject[]): Subject | null =>
  subjects.find(({ key }) => key.toUpperCase() === words.toUpperCase()) ?? typeNamed(words)?.subject ?? null;

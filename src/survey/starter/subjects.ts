import type { Subject } from '../schema/subject';

export const starterSubjects: readonly Subject[] = [];

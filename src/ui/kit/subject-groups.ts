import type { Subject } from '../../survey/schema/subject';

export interface SubjectGroup {
  readonly name: string;
  readonly subjects: readonly Subject[];
}

const groups: readonly (readonly [name: string, holds: (subject: Subject) => boolean])[] = [
  ['By code letter, for what is not listed', (s) => s.key.startsWith('any-code-')],
  ['Classes, of typical size', (s) => s.key.startsWith('any-')],
  ['Jets', (s) => s.propulsion === 'jet'],
  ['Propeller aircraft', (s) => s.propulsion === 'propeller'],
  ['Helicopters', (s) => s.propulsion === 'rotor'],
  ['Gliders', (s) => s.propulsion === 'none'],
];

/** Every word that was typed is in the name or the key, whatever the case. */
function matchesSubject({ name, key }: Subject, typed: string): boolean {
  const text = `${name} ${key}`.toLowerCase();
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/**
 * The subjects that match what was typed, each in the first group that holds it; empty groups are left out. `named`:
 * designators of the types that people call so, whatever the survey calls them.
 */
export function subjectGroups(
  subjects: readonly Subject[],
  typed: string,
  named: ReadonlySet<string> = new Set(),
): SubjectGroup[] {
  const matching = subjects.filter(
    (subject) => named.has(subject.key) || matchesSubject(subject, typed.trim()),
  );
  return groups
    .map(([name, holds]) => ({
      name,
      subjects: matching.filter((s) => groups.find(([, test]) => test(s))?.[1] === holds),
    }))
    .filter((group) => group.subjects.length > 0);
}

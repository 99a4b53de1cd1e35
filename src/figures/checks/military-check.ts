import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';

/** Whether aircraft of the military fly here: the user says so, or breaks are flown. */
const isMilitary = ({ site, runways }: Pick<Contents, 'site' | 'runways'>): boolean =>
  site.military || runways.some(({ patterns }) => patterns.some(({ pattern }) => pattern === 'break'));

/** Said of a military field until the user states what it says of photography. */
export function militaryDoubts(field: Pick<Contents, 'site' | 'runways' | 'rules'>): Problem[] {
  if (!isMilitary(field) || field.rules.photography !== 'unknown') return [];
  return [
    {
      id: null,
      reason:
        'Military flying: photography may be an offence here. Find out before you go, and state what the field says of it (its rules: photography).',
      used: true,
    },
  ];
}

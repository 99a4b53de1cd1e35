/** What stays at home unless it is ticked. `unknown`: what no part of this program knows. */
export const parts = ['contacts', 'permissions', 'log', 'plan', 'movements', 'notes', 'unknown'] as const;
export type Part = (typeof parts)[number];

/** Members of the survey's own member that are private as a whole. */
const ofSurvey: Readonly<Record<string, Part>> = { log: 'log', plan: 'plan', movements: 'movements' };
const ofRules: Readonly<Record<string, Part>> = {
  office: 'contacts',
  phone: 'contacts',
  email: 'contacts',
  notes: 'notes',
};
const ofAccess: Readonly<Record<string, Part>> = { contact: 'contacts', permission: 'permissions' };

/** The private part that a member belongs to, by the names on the way to it; null for what is passed on. */
export function partOf(path: readonly string[]): Part | null {
  const member = path.at(-1) ?? '';
  const own = (table: Readonly<Record<string, Part>>) =>
    Object.hasOwn(table, member) ? (table[member] ?? null) : null;
  const within = path.slice(0, -1).join('/');
  if (within === 'sunside') return own(ofSurvey);
  if (within === 'sunside/rules') return own(ofRules);
  if (within === 'properties/access') return own(ofAccess);
  // Why nobody may stand in an area is no note: whoever comes there must know it.
  return within === 'properties' && member === 'notes' ? 'notes' : null;
}

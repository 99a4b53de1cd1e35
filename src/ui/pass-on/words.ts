import { parts, type Part } from '../../exports/pass-on/parts';
import type { PrivateThing } from '../../exports/pass-on/pass-on';
import type { Arrived } from '../../ports/passing';
import type { Survey } from '../../survey/document';
import { isKind, kinds } from '../../survey/kinds';
import { shortened } from '../../units/plain-text';
import { featureTitle } from '../words/titles';

const partLabels: Readonly<Record<Part, string>> = {
  contacts: 'Contacts: whom to ask, telephone, e-mail',
  permissions: 'Permissions: what was asked and answered',
  log: 'Log: what was photographed',
  plan: 'Plan: ways between spots and chosen windows',
  movements: 'Movements that are due',
  notes: 'Notes',
  unknown: 'What Sunside does not know',
};

const memberNames: Readonly<Record<string, string>> = {
  contact: 'contact',
  office: 'office',
  phone: 'telephone',
  email: 'e-mail',
  permission: 'permission',
  notes: 'notes',
  plan: 'plan',
  movements: 'movements',
  log: 'log',
};

export interface PartLine {
  readonly part: Part;
  readonly label: string;
  /** "Mill Lane lay-by: contact". */
  readonly things: readonly string[];
}

/** What is private in a survey, part by part; a part of which it has nothing has no line. */
export function partLines(survey: Survey, found: readonly PrivateThing[]): readonly PartLine[] {
  return parts
    .map((part) => ({
      part,
      label: partLabels[part],
      things: found.filter((thing) => thing.part === part).map((thing) => thingWords(survey, thing)),
    }))
    .filter(({ things }) => things.length > 0);
}

const mostMember = 60;

function thingWords(survey: Survey, { id, member }: PrivateThing): string {
  const what = memberNames[member] ?? `"${shortened(member, mostMember)}"`;
  if (id === null) return `The survey: ${what}`;
  const title = featureTitle(survey, id);
  return member === '' ? title : `${title}: ${what}`;
}

/** "1 runway, 5 standing spots and 2 aprons". */
export function countWords(counts: Arrived['counts']): string {
  const words = counts.map(({ kind, count }) => {
    if (!isKind(kind)) return count === 1 ? '1 thing of another kind' : `${count} things of other kinds`;
    const many = kinds[kind].many;
    return count === 1 ? `1 ${kinds[kind].word}` : `${count} ${many.charAt(0).toLowerCase()}${many.slice(1)}`;
  });
  const last = words.at(-1);
  if (last === undefined) return 'nothing drawn yet';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

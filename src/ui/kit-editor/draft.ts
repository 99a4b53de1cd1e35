import { freshKey } from '../../survey/entry-key';
import { readStatedEntry, type ListEntries, type ListName } from '../../survey/kit-lists';
import { kitMembers } from '../../survey/kit-members';
import type { Formats } from '../formats';
import { fieldText, readField } from './fields';
import { listWords } from './words';

/** What stands in the fields of a form, by member. */
export type Draft = Readonly<Record<string, string>>;

export type DraftReading<L extends ListName> =
  { readonly ok: true; readonly entry: ListEntries[L] } | { readonly ok: false; readonly errors: Draft };

/** The form of an entry, or an empty one. */
export function draftOf<L extends ListName>(list: L, entry: ListEntries[L] | null, format: Formats): Draft {
  const values = (entry ?? {}) as Readonly<Record<string, unknown>>;
  const fields = kitMembers[list].map(
    ({ member, measure }) => [member, fieldText(measure, values[member], format)] as const,
  );
  return { key: entry?.key ?? '', ...Object.fromEntries(fields) };
}

/**
 * Reads a form. What was not touched keeps its value to the last digit, however it is shown. Every field that does
 * not fit is answered with its name and the mend. `taken`: the keys of the other entries.
 */
export function readDraft<L extends ListName>(
  list: L,
  draft: Draft,
  before: ListEntries[L] | null,
  taken: ReadonlySet<string>,
  format: Formats,
): DraftReading<L> {
  const shown = draftOf(list, before, format);
  const old = (before ?? {}) as Readonly<Record<string, unknown>>;
  const said: Record<string, unknown> = {};
  const errors: Record<string, string> = {};
  for (const { member, name, measure } of kitMembers[list]) {
    const text = (draft[member] ?? '').trim();
    const reading =
      before && text === shown[member]
        ? { ok: true as const, value: old[member] }
        : readField(measure, text, format);
    if (reading.ok) said[member] = reading.value;
    else errors[member] = `${name}: ${reading.reason}`;
  }
  const typedKey = (draft['key'] ?? '').trim();
  const name = typeof said['name'] === 'string' && said['name'] !== '' ? said['name'] : listWords[list].one;
  const key = typedKey === '' ? freshKey(name, taken) : typedKey;
  if (taken.has(key))
    errors['key'] = `Key: another ${listWords[list].one} has "${key}". Type one that is not there yet.`;
  const entry = readStatedEntry(list, { ...said, key });
  if (!entry.ok)
    for (const { member, expected } of entry.misfits)
      errors[member] ??= misfitWords(list, member, expected, draft[member] ?? '');
  return entry.ok && Object.keys(errors).length === 0
    ? { ok: true, entry: entry.entry }
    : { ok: false, errors };
}

function misfitWords(list: ListName, member: string, expected: string, text: string): string {
  const found = kitMembers[list].find((m) => m.member === member);
  const does = found?.measure === 'propulsion' ? 'Choose' : 'Type';
  const what = text.trim() === '' ? 'is missing' : `cannot be ${text.trim()}`;
  return `${found?.name ?? member} ${what}. ${does} ${expected}.`;
}

import { freshKey } from '../../survey/entry-key';
import { readStatedEntry, type ListEntries, type ListName } from '../../survey/kit-lists';
import type { Formats } from '../formats';
import { fieldOf, formFields, membersOf, readIn, textIn } from './form-fields';
import { listWords } from './words';

/** What stands in the fields of a form, by member. */
export type Draft = Readonly<Record<string, string>>;

export type DraftReading<L extends ListName> =
  { readonly ok: true; readonly entry: ListEntries[L] } | { readonly ok: false; readonly errors: Draft };

/** The form of an entry, or an empty one. */
export function draftOf<L extends ListName>(list: L, entry: ListEntries[L] | null, format: Formats): Draft {
  const values = (entry ?? {}) as Readonly<Record<string, unknown>>;
  const fields = formFields(list).map((field) => [field.member, textIn(field, values, format)] as const);
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
  for (const field of formFields(list)) {
    const { member, name } = field;
    const text = (draft[member] ?? '').trim();
    if (before && text === shown[member]) {
      for (const kept of membersOf(field)) if (old[kept] !== undefined) said[kept] = old[kept];
      continue;
    }
    const reading = readIn(field, text, format);
    if (reading.ok) Object.assign(said, reading.values);
    else errors[member] = `${name}: ${reading.reason}`;
  }
  const typedKey = (draft['key'] ?? '').trim();
  const name = typeof said['name'] === 'string' && said['name'] !== '' ? said['name'] : listWords[list].one;
  const key = typedKey === '' ? freshKey(name, taken) : typedKey;
  if (taken.has(key))
    errors['key'] = `Key: another ${listWords[list].one} has "${key}". Type one that is not there yet.`;
  const entry = readStatedEntry(list, { ...said, key });
  if (!entry.ok)
    for (const { member, expected } of entry.misfits) {
      const field = fieldOf(list, member)?.member ?? member;
      errors[field] ??= misfitWords(list, field, expected, draft[field] ?? '');
    }
  return entry.ok && Object.keys(errors).length === 0
    ? { ok: true, entry: entry.entry }
    : { ok: false, errors };
}

function misfitWords(list: ListName, member: string, expected: string, text: string): string {
  const found = fieldOf(list, member);
  const does = found?.measure === 'propulsion' ? 'Choose' : 'Type';
  const what = text.trim() === '' ? 'is missing' : `cannot be ${text.trim()}`;
  return `${found?.name ?? member} ${what}. ${does} ${expected}.`;
}

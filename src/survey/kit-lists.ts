import * as v from 'valibot';
import { isObject, type Json, type JsonObject } from './json';
import { bodyFields, lensFields, lensRangeDoubt, type Body, type Lens } from './schema/kit';
import { subjectFields, type Subject } from './schema/subject';

/** The lists of things with a key that a survey carries. */
export interface ListEntries {
  readonly bodies: Body;
  readonly lenses: Lens;
  readonly subjects: Subject;
}
export type ListName = keyof ListEntries;

const schemas = {
  bodies: v.object(bodyFields),
  lenses: v.object(lensFields),
  subjects: v.object(subjectFields),
};

/** A member of an entry that does not fit: what is expected of it, in words that a mend can follow. */
export interface Misfit {
  readonly member: string;
  /** "a number above 0 and up to 5000 mm". */
  readonly expected: string;
  readonly got: unknown;
}

export type EntryReading<L extends ListName> =
  | { readonly ok: true; readonly entry: ListEntries[L] }
  | { readonly ok: false; readonly misfits: readonly Misfit[] };

/** Reads an entry as a whole: a camera without a sensor is no camera. Every misfit is named, not only the first. */
export function readEntry<L extends ListName>(list: L, value: unknown): EntryReading<L> {
  const parsed = v.safeParse(schemas[list], value);
  if (!parsed.success) {
    const misfits = new Map<string, Misfit>();
    for (const issue of parsed.issues) {
      const key = issue.path?.[0]?.key;
      const member = typeof key === 'string' ? key : '';
      if (!misfits.has(member))
        misfits.set(member, { member, expected: bare(issue.message), got: issue.input });
    }
    return { ok: false, misfits: [...misfits.values()] };
  }
  const entry = parsed.output as ListEntries[L];
  const doubt = list === 'lenses' ? lensRangeDoubt(entry as Lens) : null;
  return doubt === null
    ? { ok: true, entry }
    : { ok: false, misfits: [{ member: 'longest', expected: bare(doubt), got: (entry as Lens).longest }] };
}

const bare = (message: string) => message.replace(/^expected /, '');

/** An entry as the file has it: what has no word of its own is absent. */
export const entryAsJson = (entry: ListEntries[ListName]): JsonObject =>
  Object.fromEntries(
    Object.entries(entry).filter((member) => member[1] !== null) as (readonly [string, Json])[],
  );

/** Where in a list of the file the entry with this key stands that the readers use; -1 for none. */
export const entryIndex = (list: ListName, raw: readonly Json[], key: string): number =>
  raw.findIndex((entry) => isObject(entry) && entry['key'] === key && readEntry(list, entry).ok);

import * as v from 'valibot';
import { isObject, type Json, type JsonObject } from './json';
import { bodyFields, lensFields, lensRangeDoubt, type Body, type Lens } from './schema/kit';
import { subjectFields, type Subject } from './schema/subject';
import { likeSize, performance, type Performance } from './starter/like-size';

/** The lists of things with a key that a survey carries. */
export interface ListEntries {
  readonly bodies: Body;
  readonly lenses: Lens;
  readonly subjects: Subject;
}
export type ListName = keyof ListEntries;

const fields: Readonly<Record<ListName, v.ObjectEntries>> = {
  bodies: bodyFields,
  lenses: lensFields,
  subjects: subjectFields,
};

/** A member of an entry that does not fit: what is expected of it, in words that a mend can follow. */
export interface Misfit {
  readonly member: string;
  /** "a number from 1 to 5000 mm". */
  readonly expected: string;
  readonly got: unknown;
}

/** A member that took the value of something like it. */
export interface StandIn extends Misfit {
  readonly used: number;
  /** Whose value it is. */
  readonly of: string;
}

export type EntryReading<L extends ListName> =
  | { readonly ok: true; readonly entry: ListEntries[L]; readonly standIns: readonly StandIn[] }
  | { readonly ok: false; readonly misfits: readonly Misfit[] };

/**
 * Reads an entry as a whole: a camera without a sensor is no camera. Every misfit is named, not only the first. A subject
 * that does not say how it flies takes the figures of the starter's nearest in size.
 */
export function readEntry<L extends ListName>(list: L, value: unknown): EntryReading<L> {
  const reading = readMembers(list, value);
  if (list !== 'subjects' || reading.misfits.length === 0) return whole(list, reading, []);
  const { propulsion, span } = reading.read as Partial<Subject>;
  if (propulsion === undefined || span === undefined) return whole(list, reading, []);
  const like = likeSize(propulsion, span);
  const isPerformance = (member: string): member is Performance =>
    (performance as readonly string[]).includes(member);
  const standIns = reading.misfits.flatMap((misfit): StandIn[] =>
    isPerformance(misfit.member) ? [{ ...misfit, used: like[misfit.member], of: like.name }] : [],
  );
  const read = { ...reading.read, ...Object.fromEntries(standIns.map((s) => [s.member, s.used])) };
  const misfits = reading.misfits.filter(({ member }) => !isPerformance(member));
  return whole(list, { read, misfits }, standIns);
}

/** The same where somebody is asked for every member, in a form or a table: nothing stands in. */
export const readStatedEntry = <L extends ListName>(list: L, value: unknown): EntryReading<L> =>
  whole(list, readMembers(list, value), []);

interface MembersReading {
  readonly read: Readonly<Record<string, unknown>>;
  readonly misfits: readonly Misfit[];
}

function readMembers(list: ListName, value: unknown): MembersReading {
  if (!isObject(value))
    return { read: {}, misfits: [{ member: '', expected: 'an object with a key', got: value }] };
  const read: Record<string, unknown> = {};
  const misfits: Misfit[] = [];
  for (const [member, schema] of Object.entries(fields[list])) {
    const given = Object.hasOwn(value, member) ? value[member] : undefined;
    const parsed = v.safeParse(schema, given);
    if (parsed.success) read[member] = parsed.output;
    else misfits.push({ member, expected: bare(parsed.issues[0].message), got: parsed.issues[0].input });
  }
  return { read, misfits };
}

function whole<L extends ListName>(
  list: L,
  { read, misfits }: MembersReading,
  standIns: readonly StandIn[],
): EntryReading<L> {
  if (misfits.length > 0) return { ok: false, misfits };
  // Every member has been read by its own schema.
  const entry = read as unknown as ListEntries[L];
  const doubt = list === 'lenses' ? lensRangeDoubt(entry as Lens) : null;
  return doubt === null
    ? { ok: true, entry, standIns }
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

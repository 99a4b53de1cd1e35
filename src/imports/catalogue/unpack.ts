import * as v from 'valibot';
import { lineEnd } from './columns';
import type { Fields, Loaded, Numbers } from './types';

/** Place of the airfield or runway, place in a list of words, figure. */
export type Triple = readonly [number, number, number];

/** The words for each file in what a user reads when it cannot be used. */
export type FileName = 'The airfield catalogue' | 'The list of runways' | 'The list of frequencies';

/** JSON -> what the schema says it is, or why it is not. */
export function fitting<S extends v.GenericSchema>(
  what: FileName,
  schema: S,
  json: unknown,
): Loaded<v.InferOutput<S>> {
  const parsed = v.safeParse(schema, json);
  if (parsed.success) return { ok: true, value: parsed.output };
  const at = v.getDotPath(parsed.issues[0]);
  return { ok: false, reason: `${what} does not fit this program${at ? ` (at ${at})` : ''}.` };
}

export const damaged = (what: FileName, why: string) =>
  ({ ok: false, reason: `${what} is damaged: ${why}.` }) as const;

/** Places are told by counting: a file of another build would give an airfield the runways of another. */
export const ofAnotherBuild = (what: FileName, { builtBy }: { readonly builtBy: string }, fields: Fields) =>
  builtBy === fields.builtBy ? null : damaged(what, 'it belongs to another version; load the page again');

/** The lines of a text, each ended: what comes after the last end is none. */
export const lines = (text: string) => text.split(lineEnd).slice(0, -1);

export function sums(values: Numbers): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  for (let i = 0; i < values.length; i++) out[i] = sum += values[i] as number;
  return out;
}

/** Where each entry's share of another column begins, one more than there are entries. */
export function begins(counts: Numbers): Float64Array {
  const out = new Float64Array(counts.length + 1);
  for (let i = 0; i < counts.length; i++) out[i + 1] = (out[i] as number) + (counts[i] as number);
  return out;
}

/** Three columns -> the rows of each first place; the first column is differences. */
export function triples(differences: Numbers, second: Numbers, figures: Numbers): Map<number, Triple[]> {
  const out = new Map<number, Triple[]>();
  for (const [i, first] of sums(differences).entries()) {
    const triple: Triple = [first, second[i] ?? -1, figures[i] ?? 0];
    const list = out.get(first);
    if (list) list.push(triple);
    else out.set(first, [triple]);
  }
  return out;
}

export const secondOf = (all: ReadonlyMap<number, readonly Triple[]>) =>
  [...all.values()].flatMap((list) => list.map((t) => t[1]));

/** Reads a column at a place that a reader has found to be there. */
export function at<T>(column: ArrayLike<T>, index: number): T {
  if (!(index >= 0 && index < column.length))
    throw new RangeError(`expected a place from 0 to ${column.length - 1}, got ${index}`);
  return column[index] as T;
}

import * as v from 'valibot';
import type { Fields, Loaded } from './types';

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

export const lines = (text: string, like: readonly unknown[]) =>
  text === '' && like.length === 0 ? [] : text.split('\n');

export function sums(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => (sum += value));
}

/** Where each entry's share of another column begins, one more than there are entries. */
export const begins = (counts: readonly number[]) => [0, ...sums(counts)];

export function triples(flat: readonly number[]): Map<number, Triple[]> {
  const out = new Map<number, Triple[]>();
  for (let i = 0; i + 2 < flat.length; i += 3) {
    const triple: Triple = [flat[i] ?? 0, flat[i + 1] ?? 0, flat[i + 2] ?? 0];
    const list = out.get(triple[0]);
    if (list) list.push(triple);
    else out.set(triple[0], [triple]);
  }
  return out;
}

export const secondOf = (all: ReadonlyMap<number, readonly Triple[]>) =>
  [...all.values()].flatMap((list) => list.map((t) => t[1]));

/** Reads a column at a place that a reader has found to be there. */
export function at<T>(column: readonly T[], index: number): T {
  if (!(index >= 0 && index < column.length))
    throw new RangeError(`expected a place from 0 to ${column.length - 1}, got ${index}`);
  return column[index] as T;
}

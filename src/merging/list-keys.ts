import { isObject, type Json, type JsonObject } from '../survey/json';

type KeyOf = (entry: JsonObject) => Json | undefined;

/** By which member the entries of a list are told apart, where it is not `key` or `id`. */
const keyed: Readonly<Record<string, KeyOf>> = {
  '/sunside/kits': (kit) => kit['name'],
  '/sunside/flow/configurations': (configuration) => configuration['name'],
  '/sunside/sky': (day) => day['date'],
  '/sunside/sources': (source) => source['text'],
  '/sunside/plan/moves': ({ between }) =>
    Array.isArray(between) && between.every((id) => typeof id === 'string')
      ? [...between].sort().join(' ')
      : undefined,
  '/sunside/plan/chosen': ({ spot, path, from, to }) => JSON.stringify([spot, path, from, to]),
};

/** The entries of a list by their keys, in its order; null where a key is missing or stands twice. */
export function entriesByKey(pointer: string, list: Json | undefined): ReadonlyMap<string, Json> | null {
  if (list === undefined) return new Map();
  if (!Array.isArray(list)) return null;
  const keyOf: KeyOf = keyed[pointer] ?? ((entry) => entry['key'] ?? entry['id']);
  const entries = new Map<string, Json>();
  for (const entry of list as readonly Json[]) {
    const key = isObject(entry) ? keyOf(entry) : undefined;
    if (typeof key !== 'string' || entries.has(key)) return null;
    entries.set(key, entry);
  }
  return entries;
}

import type { Survey } from '../document';
import { isObject } from '../json';
import { entryAsJson, entryIndex, type ListEntries, type ListName } from '../kit-lists';
import { asPatch } from './change-entry';
import { listInFile, withList } from './kit-in-file';
import { patched } from './set-properties';

/** Takes entries over from a table: the same key replaces, a new one comes to the end of the list. */
export function importEntries<L extends ListName>(
  survey: Survey,
  list: L,
  incoming: readonly ListEntries[L][],
): Survey {
  if (incoming.length === 0) return survey;
  const entries = [...listInFile(survey, list)];
  for (const entry of incoming) {
    const index = entryIndex(list, entries, entry.key);
    const old = entries[index];
    if (isObject(old)) entries[index] = patched(old, asPatch(entry));
    else entries.push(entryAsJson(entry));
  }
  return withList(survey, list, entries);
}

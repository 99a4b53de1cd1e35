import type { Survey } from '../document';
import { isObject } from '../json';
import { entryIndex, type ListName } from '../kit-lists';
import { listInFile, withList } from './kit-in-file';

/** A copy of an entry behind it, under a key of its own, named so that the two can be told apart. */
export function duplicateEntry(survey: Survey, list: ListName, key: string, newKey: string): Survey {
  const entries = listInFile(survey, list);
  const index = entryIndex(list, entries, key);
  const old = entries[index];
  if (!isObject(old)) return survey;
  const name = typeof old['name'] === 'string' && old['name'] !== '' ? old['name'] : key;
  return withList(
    survey,
    list,
    entries.toSpliced(index + 1, 0, { ...old, key: newKey, name: `${name} (copy)` }),
  );
}

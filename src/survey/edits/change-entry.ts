import type { Survey } from '../document';
import { isObject, type Json } from '../json';
import { entryIndex, type ListEntries, type ListName } from '../kit-lists';
import { withKeyChanged } from './chosen-keys';
import { listInFile, withList } from './kit-in-file';
import { patched, type Patch } from './set-properties';

/** Sets what an entry says; members that the program does not know stay. A new key takes the choice with it. */
export function changeEntry<L extends ListName>(
  survey: Survey,
  list: L,
  key: string,
  entry: ListEntries[L],
): Survey {
  const entries = listInFile(survey, list);
  const index = entryIndex(list, entries, key);
  const old = entries[index];
  if (!isObject(old)) return survey;
  const changed = withList(survey, list, entries.with(index, patched(old, asPatch(entry))));
  return entry.key === key ? changed : withKeyChanged(changed, list, key, entry.key);
}

/** Null means that the entry has no word of its own: the member goes. */
export const asPatch = (entry: ListEntries[ListName]): Patch =>
  Object.fromEntries(
    Object.entries(entry).map(([member, value]) => [member, value === null ? undefined : (value as Json)]),
  );

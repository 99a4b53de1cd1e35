import type { Survey } from '../document';
import { entryIndex, readEntry, type ListName } from '../kit-lists';
import { listInFile, withList } from './kit-in-file';

/** Moves an entry past its neighbour in the list: -1 towards the front, 1 towards the end. */
export function moveEntry(survey: Survey, list: ListName, key: string, by: -1 | 1): Survey {
  const entries = listInFile(survey, list);
  const from = entryIndex(list, entries, key);
  const moving = entries[from];
  if (moving === undefined) return survey;
  // What does not fit is not shown: a step past it would look like none.
  let to = from + by;
  while (entries[to] !== undefined && !readEntry(list, entries[to]).ok) to += by;
  if (entries[to] === undefined) return survey;
  return withList(survey, list, entries.toSpliced(from, 1).toSpliced(to, 0, moving));
}

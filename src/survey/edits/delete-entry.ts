import type { Survey } from '../document';
import { entryIndex, readEntry, type ListName } from '../kit-lists';
import { withKeyChanged } from './chosen-keys';
import { listInFile, withList } from './kit-in-file';

/** Why an entry cannot be taken away, or null when it can: an empty list would be the starter list again. */
export function whyEntryStays(survey: Survey, list: ListName): 'last-of-list' | null {
  const fitting = listInFile(survey, list).filter((entry) => readEntry(list, entry).ok);
  return fitting.length > 1 ? null : 'last-of-list';
}

/** Takes a body, a lens or a subject out of its list, and out of what is chosen. */
export function deleteEntry(survey: Survey, list: ListName, key: string): Survey {
  const entries = listInFile(survey, list);
  const index = entryIndex(list, entries, key);
  if (index < 0 || whyEntryStays(survey, list) !== null) return survey;
  return withKeyChanged(withList(survey, list, entries.toSpliced(index, 1)), list, key, undefined);
}

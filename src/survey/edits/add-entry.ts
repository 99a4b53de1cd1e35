import type { Survey } from '../document';
import { entryAsJson, type ListEntries, type ListName } from '../kit-lists';
import { listInFile, withList } from './kit-in-file';

/** Puts a body, a lens or a subject at the end of its list. Its key must not be taken. */
export const addEntry = <L extends ListName>(survey: Survey, list: L, entry: ListEntries[L]): Survey =>
  withList(survey, list, [...listInFile(survey, list), entryAsJson(entry)]);

import type { Survey } from '../document';
import { isObject, type Json, type JsonObject } from '../json';
import { entryAsJson, readEntry, type ListName } from '../kit-lists';
import { starterLists } from '../read-kit';
import { starterKit } from '../starter/kit';

const asList = (value: Json | undefined): readonly Json[] =>
  Array.isArray(value) ? (value as readonly Json[]) : [];

/**
 * A list as it stands in the file. Where the starter list stands in, it is written out whole, since from the
 * first edit on the list is the user's; entries that do not fit stay behind it.
 */
function ownList(list: ListName, value: Json | undefined): readonly Json[] {
  const given = asList(value);
  if (given.some((entry) => readEntry(list, entry).ok)) return given;
  return [...starterLists[list].map(entryAsJson), ...given];
}

/** The kit in use with every list written out. */
export function ownKit({ sunside }: Survey): JsonObject {
  const kit = sunside['kit'];
  const given = isObject(kit) ? kit : { fill: starterKit.fill };
  return { ...given, bodies: ownList('bodies', given['bodies']), lenses: ownList('lenses', given['lenses']) };
}

/** The kits that stand by, as they are in the file. */
export const standingBy = ({ sunside }: Survey): readonly Json[] => asList(sunside['kits']);

/** A list as the first edit would find it. */
export function listInFile(survey: Survey, list: ListName): readonly Json[] {
  if (list === 'subjects') return ownList(list, survey.sunside['subjects']);
  return asList(ownKit(survey)[list]);
}

/** The survey with another list; for a list of the kit, the kit is written out. */
export function withList(survey: Survey, list: ListName, entries: readonly Json[]): Survey {
  const members =
    list === 'subjects' ? { subjects: entries } : { kit: { ...ownKit(survey), [list]: entries } };
  return { ...survey, sunside: { ...survey.sunside, ...members } };
}

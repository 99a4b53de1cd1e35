import type { Survey } from '../document';
import { freshId } from '../ids';
import { isObject, type Json, type JsonObject } from '../json';
import { movementKey, type Movement } from '../schema/movement';
import { patched, type Patch } from './set-properties';

const inFile = (survey: Survey): readonly Json[] => {
  const given = survey.sunside['movements'];
  return Array.isArray(given) ? (given as readonly Json[]) : [];
};
const withList = (survey: Survey, movements: readonly Json[]): Survey => ({
  ...survey,
  sunside: patched(survey.sunside, { movements: movements.length > 0 ? movements : undefined }),
});
const idOf = (entry: Json): string | null =>
  isObject(entry) && typeof entry['id'] === 'string' ? entry['id'] : null;

/** What says nothing is left out of the file. */
const stated = (movement: Movement): JsonObject =>
  Object.fromEntries(
    Object.entries(movement).filter(([, value]) => value !== null && value !== '' && value !== false),
  );

/** Adds movements, each with an id of its own; `present`: those that are there. One that is there already is passed over. */
export function addMovements(
  survey: Survey,
  present: readonly Movement[],
  movements: readonly Omit<Movement, 'id'>[],
): Survey {
  const list = inFile(survey);
  const ids = new Set(list.map(idOf).filter((id) => id !== null));
  const keys = new Set(present.map(movementKey));
  const added = movements.flatMap((movement) => {
    const key = movementKey(movement);
    if (keys.has(key)) return [];
    keys.add(key);
    const id = freshId(ids);
    ids.add(id);
    return [stated({ ...movement, id })];
  });
  return added.length === 0 ? survey : withList(survey, [...list, ...added]);
}

/** Sets what is said of one movement. */
export const changeMovement = (survey: Survey, id: string, patch: Patch): Survey =>
  withList(
    survey,
    inFile(survey).map((entry) => (isObject(entry) && idOf(entry) === id ? patched(entry, patch) : entry)),
  );

/** Takes movements out. */
export const deleteMovements = (survey: Survey, ids: ReadonlySet<string>): Survey =>
  withList(
    survey,
    inFile(survey).filter((entry) => !ids.has(idOf(entry) ?? '')),
  );

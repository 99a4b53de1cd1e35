import type { Survey } from '../document';
import { isObject, type Json, type JsonObject } from '../json';
import { changeFeature } from './change-feature';

/** A change to some members of an object: a value sets a member, undefined takes it away. */
export type Patch = Readonly<Record<string, Json | undefined>>;

export function patched(object: JsonObject, patch: Patch): JsonObject {
  const merged = Object.entries({ ...object, ...patch }).filter(
    (entry): entry is [string, Json] => entry[1] !== undefined,
  );
  return Object.fromEntries(merged);
}

/** Sets what the user typed about a feature: name, eye height, notes, surface ... */
export function setProperties(survey: Survey, id: string, patch: Patch): Survey {
  return changeFeature(survey, id, (feature) => ({
    ...feature,
    properties: patched(feature.properties ?? {}, patch),
  }));
}

/** Sets fields of a standing spot's access record. */
export function setAccess(survey: Survey, id: string, patch: Patch): Survey {
  return changeFeature(survey, id, (feature) => {
    const access = feature.properties?.['access'];
    return {
      ...feature,
      properties: { ...feature.properties, access: patched(isObject(access) ? access : {}, patch) },
    };
  });
}

/** Sets fields of one end of a runway. */
export function setRunwayEnd(survey: Survey, id: string, end: 0 | 1, patch: Patch): Survey {
  return changeFeature(survey, id, (feature) => {
    const given = feature.properties?.['ends'];
    const list = Array.isArray(given) ? (given as readonly Json[]) : [];
    const at = (i: 0 | 1): JsonObject => {
      const old = list[i];
      return isObject(old) ? old : {};
    };
    const ends = [at(0), at(1)].map((old, i) => (i === end ? patched(old, patch) : old));
    return { ...feature, properties: { ...feature.properties, ends: [...ends, ...list.slice(2)] } };
  });
}

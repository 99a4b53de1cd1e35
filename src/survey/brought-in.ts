import type { SurveyFeature } from './document';
import { tidyShape, type NewShape } from './edits/add-feature';
import { isObject, type Json, type JsonObject } from './json';
import type { Kind } from './kinds';

/**
 * Something that an import would bring in. `source` names it where it comes from ("osm way/123") and stays the same
 * from one import to the next; `properties` are those of its kind.
 */
export interface Incoming {
  readonly source: string;
  readonly kind: Kind;
  readonly shape: NewShape;
  readonly properties: JsonObject;
}

/**
 * How an incoming feature stands to the survey: not there yet; there just so; there, and the source says something
 * else now; there with the user's edits, and the source has nothing new.
 */
export type Standing = 'new' | 'same' | 'changed';

/** The member that says where a feature came from, and what it was like then. */
export const originMember = 'origin';

/** Where a feature came from; null for one that was drawn. */
export function sourceOf(feature: SurveyFeature): string | null {
  const origin = feature.properties?.[originMember];
  const source = isObject(origin) ? origin['source'] : null;
  return typeof source === 'string' ? source : null;
}

/** A short print of a value (FNV-1a, 32 bits): equal values have equal prints. */
export function printOf(value: Json | undefined): string {
  const text = JSON.stringify(sorted(value ?? null));
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}

/** With the members of objects in one order: a list is its order, an object is not. */
function sorted(value: Json): Json {
  if (Array.isArray(value)) return isPlain(value) ? (value as Json) : (value as readonly Json[]).map(sorted);
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.keys(value)
      .sort()
      .map((key) => [key, sorted(value[key] as Json)]),
  );
}

/** Lists of numbers and texts, as coordinates are: nothing in them to sort. Lists here hold one sort of thing. */
const isPlain = (value: Json | undefined): boolean =>
  Array.isArray(value) ? isPlain((value as readonly Json[])[0]) : !isObject(value);

/** Prints of all that an import says of a feature: its members and its geometry. */
export function printsOf({ shape, properties }: Incoming): JsonObject {
  const members = Object.entries(properties).map(([key, value]) => [key, printOf(value)] as const);
  return Object.fromEntries([...members, ['geometry', printOf(tidyShape(shape))]]);
}

/** Prints that were kept with a feature when it was brought in. */
export function keptPrints(feature: SurveyFeature): JsonObject {
  const origin = feature.properties?.[originMember];
  const kept = isObject(origin) ? origin['was'] : null;
  return isObject(kept) ? kept : {};
}

export function standingOf(incoming: Incoming, there: SurveyFeature | undefined): Standing {
  if (!there) return 'new';
  return printOf(printsOf(incoming)) === printOf(keptPrints(there)) ? 'same' : 'changed';
}

/** Features of a survey by their source. */
export function bySource(features: readonly SurveyFeature[]): ReadonlyMap<string, SurveyFeature> {
  const found = new Map<string, SurveyFeature>();
  for (const feature of features) {
    const source = sourceOf(feature);
    // A copy that the user made of it comes behind the original.
    if (source !== null && !found.has(source)) found.set(source, feature);
  }
  return found;
}

import type { Survey, SurveyFeature } from '../survey/document';
import { isObject, type Json, type JsonObject } from '../survey/json';
import type { SameThing } from './same-things';

/** Members whose text is the id of a feature, or a path that begins with one ("<runway id>/25/arrival"). */
const referring = new Set(['runway', 'spot', 'path', 'between', 'obstacle', 'feature']);

/** The other survey with my ids for what both have, and its runways drawn in my direction; every reference follows. */
export function followReferences(theirs: Survey, same: readonly SameThing[]): Survey {
  if (same.length === 0) return theirs;
  const renamed = new Map(same.map((thing) => [thing.theirs, thing]));
  const idOf = (text: string): string => {
    const [id = '', ...rest] = text.split('/');
    const thing = renamed.get(id);
    return thing ? [thing.mine, ...rest].join('/') : text;
  };
  const follow = (value: Json, refers: boolean): Json => {
    if (typeof value === 'string') return refers ? idOf(value) : value;
    if (Array.isArray(value)) return (value as readonly Json[]).map((entry) => follow(entry, refers));
    if (!isObject(value)) return value;
    const turned = typeof value['runway'] === 'string' && renamed.get(value['runway'])?.reversed;
    return Object.fromEntries(
      Object.entries(value).map(([key, member]) => [
        key,
        turned && key === 'end' ? otherEnd(member) : follow(member, referring.has(key)),
      ]),
    );
  };
  return {
    ...theirs,
    sunside: follow(theirs.sunside, false) as JsonObject,
    features: theirs.features.map((feature) => {
      const thing = renamed.get(feature.id);
      const turned = thing?.reversed ? reversedRunway(feature) : feature;
      const properties = turned.properties && (follow(turned.properties, false) as JsonObject);
      return { ...turned, properties, id: thing?.mine ?? feature.id };
    }),
  };
}

const otherEnd = (end: Json): Json => (end === 0 ? 1 : end === 1 ? 0 : end);

/** The same runway with its ends in the other order. */
function reversedRunway(feature: SurveyFeature): SurveyFeature {
  const { properties, geometry } = feature;
  const ends = properties?.['ends'];
  const coordinates = geometry?.['coordinates'];
  return {
    ...feature,
    properties: properties && {
      ...properties,
      ...(Array.isArray(ends) ? { ends: [...(ends as readonly Json[])].reverse() } : {}),
    },
    geometry: geometry && {
      ...geometry,
      ...(Array.isArray(coordinates) ? { coordinates: [...(coordinates as readonly Json[])].reverse() } : {}),
    },
  };
}

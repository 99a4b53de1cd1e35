import { printOf } from '../../survey/brought-in';
import type { Position } from '../../survey/document';
import { readShape } from '../../survey/geometry';
import { isObject, type Json, type JsonObject } from '../../survey/json';
import { isArea, isTree, isWanted, treesLeftOut } from './classify';
import { isClosed, type Mapped, type Tags } from './elements';
import type { MappedThings } from './mapped';
import { tagsOf } from './overpass';
import { Tally } from '../bring-in/tally';

/** GeoJSON whose properties are OpenStreetMap's tags, as the usual converters write it. */
export function readOsmGeoJson(features: readonly Json[]): MappedThings {
  const tally = new Tally();
  const things: Mapped[] = [];
  for (const feature of features) {
    if (!isObject(feature)) continue;
    const { geometry } = feature;
    const properties = isObject(feature['properties']) ? feature['properties'] : {};
    const tags = tagsOf(isObject(properties['tags']) ? properties['tags'] : properties);
    if (isTree(tags) && isObject(geometry) && geometry['type'] === 'Point') tally.add(...treesLeftOut);
    if (!isWanted(tags) || !isObject(geometry)) continue;
    const id = idOf(feature, properties) ?? `shape/${printOf(geometry)}`;
    const parts = partsOf(geometry);
    parts.forEach((part, i) => {
      const thing = thingOf(`${id}${i === 0 ? '' : `#${i + 1}`}`, tags, part);
      if (typeof thing === 'string') tally.add('things', thing);
      else if (thing) things.push(thing);
    });
  }
  return { things, leftOut: tally.list, remarks: [] };
}

/** "way/123" from `id`, `@id` or `osm_id`, as converters have it. */
function idOf(feature: JsonObject, properties: JsonObject): string | null {
  const given = [feature['id'], properties['@id'], properties['id']].find(
    (id) => typeof id === 'string' && /^(way|relation)\/\d+$/.test(id),
  );
  if (typeof given === 'string') return given;
  const number = properties['osm_way_id'] ?? properties['osm_id'];
  return typeof number === 'string' || typeof number === 'number'
    ? `osm/${String(number).slice(0, 20)}`
    : null;
}

/** Multi-geometries one by one. */
function partsOf(geometry: JsonObject): JsonObject[] {
  const { type, coordinates } = geometry;
  if ((type !== 'MultiPolygon' && type !== 'MultiLineString') || !Array.isArray(coordinates))
    return [geometry];
  return (coordinates as readonly Json[]).map((part) => ({ type: type.slice(5), coordinates: part }));
}

function thingOf(id: string, tags: Tags, geometry: JsonObject): Mapped | string | null {
  if (geometry['type'] === 'Point') return null;
  const shape = readShape(geometry, ['LineString', 'Polygon']);
  if (!shape.ok) return 'their coordinates are broken';
  const area = isArea(tags);
  if (shape.shape === 'Polygon') {
    const rings = shape.coordinates as Position[][];
    return area || tags['aeroway'] !== undefined
      ? { id, tags, rings, line: null }
      : { id, tags, rings: null, line: rings[0] ?? [] };
  }
  const line = shape.coordinates as Position[];
  if (!area) return { id, tags, rings: null, line };
  return isClosed(line) ? { id, tags, rings: [line], line: null } : 'their outline is not closed';
}

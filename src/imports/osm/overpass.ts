import type { Position } from '../../survey/document';
import { isObject, shown, type Json, type JsonObject } from '../../survey/json';
import { isTree } from './classify';
import { isPlace, type OsmMember, type OsmReading, type OsmRelation, type Tags } from './elements';
import { waysOfNodes, type RawWay } from './ways-of-nodes';

/** An answer of the Overpass API (`[out:json]`), with node elements or with geometry inline (`out geom`). */
export function readOverpass(value: JsonObject): OsmReading {
  const { elements, remark } = value;
  if (!Array.isArray(elements))
    return { ok: false, reason: `At elements: expected a list, got ${shown(elements)}.` };
  const nodes = new Map<number, Position>();
  const ways: RawWay[] = [];
  const relations: OsmRelation[] = [];
  let trees = 0;
  for (const element of elements as readonly Json[]) {
    if (!isObject(element)) continue;
    const id = Number(element['id']);
    if (!Number.isSafeInteger(id)) continue;
    switch (element['type']) {
      case 'node': {
        const at = placeOf(element);
        if (at) nodes.set(id, at);
        if (isTree(tagsOf(element['tags']))) trees++;
        break;
      }
      case 'way': {
        const refs = element['nodes'];
        ways.push({
          id: String(id),
          tags: tagsOf(element['tags']),
          nodes: Array.isArray(refs) ? (refs as readonly Json[]).map(Number) : [],
          geometry: geometryOf(element['geometry']),
        });
        break;
      }
      case 'relation':
        relations.push({
          id: String(id),
          tags: tagsOf(element['tags']),
          members: membersOf(element['members']),
        });
    }
  }
  const data = waysOfNodes(nodes, ways, relations);
  // The server's word that it broke off: out of time, out of memory.
  const broken =
    typeof remark === 'string' ? [`The server that made this file says: ${remark.slice(0, 200)}`] : [];
  return { ok: true, data: { ...data, trees, remarks: [...broken, ...data.remarks] } };
}

function placeOf(value: Json | undefined): Position | null {
  if (!isObject(value)) return null;
  const { lon, lat } = value;
  return typeof lon === 'number' && typeof lat === 'number' && isPlace(lon, lat) ? [lon, lat] : null;
}

const geometryOf = (value: Json | undefined): (Position | null)[] | null =>
  Array.isArray(value) && value.length > 0 ? (value as readonly Json[]).map(placeOf) : null;

function membersOf(value: Json | undefined): OsmMember[] {
  if (!Array.isArray(value)) return [];
  return (value as readonly Json[]).flatMap((member): OsmMember[] => {
    if (!isObject(member) || member['type'] !== 'way') return [];
    const own = geometryOf(member['geometry']);
    const whole = own?.filter((p) => p !== null) ?? null;
    const role = member['role'];
    return [
      {
        ref: String(Number(member['ref'])),
        role: typeof role === 'string' ? role : '',
        positions: whole && whole.length === own?.length ? whole : null,
      },
    ];
  });
}

export function tagsOf(value: Json | undefined): Tags {
  if (!isObject(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, tag]): [string, string][] =>
      typeof tag === 'string' ? [[key, tag]] : typeof tag === 'number' ? [[key, String(tag)]] : [],
    ),
  );
}

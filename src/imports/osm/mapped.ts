import { Tally } from '../bring-in/tally';
import type { LeftOut } from '../bring-in/types';
import { treesLeftOut } from './classify';
import { isClosed, type Mapped, type OsmData, type OsmRelation, type OsmWay, type Tags } from './elements';
import { joinRings, withHoles } from './rings';
import { hasTags, memberPositions } from './ways-of-nodes';

export interface MappedThings {
  readonly things: readonly Mapped[];
  readonly leftOut: readonly LeftOut[];
  readonly remarks: readonly string[];
}

const outside = 'part of their outline is not in the file';

/** Ways and multipolygons of an extract as lines and areas; `asArea` says which closed ways are areas. */
export function mappedThings(
  data: OsmData,
  wanted: (tags: Tags) => boolean,
  asArea: (tags: Tags) => boolean,
) {
  const tally = new Tally();
  if (data.trees > 0) tally.add(...treesLeftOut, data.trees);
  const things: Mapped[] = [];
  /** Ways whose tags stand for a relation's area, or say the same as it. */
  const spoken = new Set<string>();
  let holes = 0;
  for (const relation of data.relations) {
    if (relation.tags['type'] !== 'multipolygon') continue;
    const tags = tagsOfArea(relation, data);
    if (!wanted(tags)) continue;
    const areas = areasOf(relation, data);
    holes += areas.lostHoles;
    if (areas.open > 0) tally.add('areas', outside, areas.open);
    areas.polygons.forEach((rings, i) =>
      things.push({ id: `relation/${relation.id}${i === 0 ? '' : `#${i + 1}`}`, tags, rings, line: null }),
    );
    // An outline that is tagged like the area itself would come in twice; any other (a fence along it) is one more thing.
    for (const { ref, role } of relation.members) {
      const way = data.ways.get(ref);
      if (way && role !== 'inner' && saysTheSame(way, tags)) spoken.add(ref);
    }
  }
  for (const way of data.ways.values()) {
    if (spoken.has(way.id) || !wanted(way.tags)) continue;
    const closed = isClosed(way.positions) && way.missing === 0;
    const area = asArea(way.tags);
    if (way.positions.length < 2) tally.add('things', 'they have no coordinates in the file');
    else if (area && !closed) tally.add('areas', way.missing > 0 ? outside : 'their outline is not closed');
    else
      things.push({
        id: `way/${way.id}`,
        tags: way.tags,
        rings: area ? [way.positions] : null,
        line: area ? null : way.positions,
      });
  }
  const remarks =
    holes === 0
      ? data.remarks
      : [
          ...data.remarks,
          `${holes === 1 ? 'One courtyard or clearing is' : `${holes} courtyards or clearings are`} not in the file as a whole: these areas come in without the hole.`,
        ];
  return { things, leftOut: tally.list, remarks };
}

/** Before 2017 many areas had their tags on the outline, not on the relation. */
function tagsOfArea({ tags, members }: OsmRelation, { ways }: OsmData): Tags {
  const { type: _type, ...own } = tags;
  if (hasTags(own)) return own;
  const outer = members.find(({ role, ref }) => role !== 'inner' && hasTags(ways.get(ref)?.tags ?? {}));
  return (outer && ways.get(outer.ref)?.tags) ?? {};
}

const kindKeys = ['building', 'aeroway', 'landuse', 'natural', 'leisure', 'amenity'] as const;
const saysTheSame = (way: OsmWay, tags: Tags): boolean =>
  kindKeys.some((key) => way.tags[key] !== undefined && tags[key] !== undefined);

function areasOf({ members }: OsmRelation, data: OsmData) {
  const lines = (inner: boolean) =>
    members.filter(({ role }) => (role === 'inner') === inner).map((member) => memberPositions(member, data));
  const outer = joinRings(lines(false).filter((line) => line !== null));
  const inner = joinRings(lines(true).filter((line) => line !== null));
  const missing = (list: readonly unknown[]) => list.filter((line) => line === null).length;
  return {
    polygons: withHoles(outer.closed, inner.closed),
    open: outer.open + (outer.closed.length + outer.open === 0 && missing(lines(false)) > 0 ? 1 : 0),
    lostHoles: inner.open + missing(lines(true)),
  };
}

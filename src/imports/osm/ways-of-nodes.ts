import type { Position } from '../../survey/document';
import type { OsmData, OsmMember, OsmRelation, OsmWay, Tags } from './elements';

/** A way as a file has it: node ids, or positions of its own (null for a node that is not in the file). */
export interface RawWay {
  readonly id: string;
  readonly tags: Tags;
  readonly nodes: readonly number[];
  readonly geometry: readonly (Position | null)[] | null;
}

/** Puts positions in the place of node ids, once the whole file is known: nodes may come after their ways. */
export function waysOfNodes(
  nodes: ReadonlyMap<number, Position>,
  raw: readonly RawWay[],
  relations: readonly OsmRelation[],
): Omit<OsmData, 'trees'> {
  const ways = new Map<string, OsmWay>();
  for (const { id, tags, nodes: refs, geometry } of raw) {
    const all = geometry ?? refs.map((ref) => nodes.get(ref) ?? null);
    const positions = all.filter((p) => p !== null);
    ways.set(id, { id, tags, positions, missing: all.length - positions.length });
  }
  const bare = [...ways.values()].filter((way) => way.positions.length === 0 && hasTags(way.tags)).length;
  const remarks =
    bare === 0
      ? []
      : [
          `${bare === 1 ? 'One way has' : `${bare} ways have`} no coordinates in this file. In an Overpass query end with "out geom;", or with "(._;>;); out;".`,
        ];
  return { ways, relations, remarks };
}

/** The first tag of any. */
export const hasTags = (tags: Tags): boolean => {
  for (const _ in tags) return true;
  return false;
};

/** The positions of a relation's member: its own, else those of the way. */
export const memberPositions = (member: OsmMember, { ways }: OsmData): readonly Position[] | null => {
  const way = ways.get(member.ref);
  if (member.positions) return member.positions;
  return way && way.missing === 0 && way.positions.length > 1 ? way.positions : null;
};

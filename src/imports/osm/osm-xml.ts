import sax from 'sax';
import type { Position } from '../../survey/document';
import { isTree } from './classify';
import { isPlace, type OsmMember, type OsmReading, type OsmRelation } from './elements';
import { waysOfNodes, type RawWay } from './ways-of-nodes';

interface Open {
  readonly kind: 'way' | 'relation';
  readonly id: string;
  readonly tags: Record<string, string>;
  readonly nodes: number[];
  readonly geometry: (Position | null)[];
  /** `ref` is null for what is no way; `places` are what stands inside the member itself. */
  readonly members: {
    readonly ref: string | null;
    readonly role: string;
    readonly places: (Position | null)[];
  }[];
  readonly visible: boolean;
}

const memberOf = ({ ref, role, places }: Open['members'][number]): OsmMember[] => {
  const known = places.filter((p) => p !== null);
  const whole = places.length > 1 && known.length === places.length;
  return ref === null ? [] : [{ ref, role, positions: whole ? known : null }];
};

/**
 * An .osm file, as OpenStreetMap's own programs and Overpass (`[out:xml]`) write it, piece by piece: a city's extract
 * never stands in memory as one document. Entities other than XML's own five are errors, so nothing can be expanded.
 */
export async function readOsmXml(pieces: AsyncIterable<string>): Promise<OsmReading> {
  const reader = sax.parser(true, { position: true });
  const nodes = new Map<number, Position>();
  const ways: RawWay[] = [];
  const relations: OsmRelation[] = [];
  let trees = 0;
  let open: Open | null = null;
  let root: string | null = null;
  let broken: string | null = null;
  reader.onerror = (error) => {
    broken ??= `At line ${reader.line + 1}, column ${reader.column + 1}: ${error.message.split('\n')[0] ?? 'broken'}.`;
    // What comes behind it would be guessed.
    reader.error = null as unknown as Error;
  };
  reader.onopentag = ({ name, attributes }) => {
    const at = (key: string) => attributes[key] as string | undefined;
    root ??= name;
    switch (name) {
      case 'node': {
        const [lng, lat, id] = [Number(at('lon')), Number(at('lat')), Number(at('id'))];
        if (at('lon') !== undefined && isPlace(lng, lat) && Number.isSafeInteger(id))
          nodes.set(id, [lng, lat]);
        return;
      }
      case 'way':
      case 'relation':
        open = {
          kind: name,
          id: String(Number(at('id'))),
          tags: {},
          nodes: [],
          geometry: [],
          members: [],
          visible: at('visible') !== 'false' && at('action') !== 'delete',
        };
        return;
      case 'nd': {
        if (!open) return;
        const inline = at('lon') !== undefined;
        const [lng, lat] = [Number(at('lon')), Number(at('lat'))];
        const place: Position | null = inline && isPlace(lng, lat) ? [lng, lat] : null;
        // Overpass writes a member's geometry inside it (`out geom`).
        if (open.kind === 'relation') open.members.at(-1)?.places.push(place);
        else {
          open.nodes.push(Number(at('ref')));
          open.geometry.push(place);
        }
        return;
      }
      case 'member':
        if (!open) return;
        open.members.push({
          ref: at('type') === 'way' ? String(Number(at('ref'))) : null,
          role: at('role') ?? '',
          places: [],
        });
        return;
      case 'tag':
        if (open) open.tags[at('k') ?? ''] = at('v') ?? '';
        // Of a node: nothing else of its tags is of use.
        else if (isTree({ [at('k') ?? '']: at('v') ?? '' })) trees++;
    }
  };
  reader.onclosetag = (name) => {
    if (!open || name !== open.kind) return;
    const { id, tags, nodes: refs, geometry, members, visible } = open;
    open = null;
    if (!visible) return;
    const inline = geometry.some((p) => p !== null);
    if (name === 'way') ways.push({ id, tags, nodes: refs, geometry: inline ? geometry : null });
    else relations.push({ id, tags, members: members.flatMap(memberOf) });
  };
  for await (const piece of pieces) {
    reader.write(piece);
    if (broken) break;
  }
  if (!broken) reader.close();
  const found = ways.length + nodes.size + relations.length;
  if (root !== null && root !== 'osm')
    return {
      ok: false,
      reason: `The file begins with <${String(root).slice(0, 40)}>, not with <osm>: it is no OpenStreetMap extract.`,
    };
  if (broken !== null && found === 0) return { ok: false, reason: `The file is not XML. ${String(broken)}` };
  const data = waysOfNodes(nodes, ways, relations);
  const remarks =
    broken === null
      ? data.remarks
      : [
          `The file breaks off or is damaged. ${String(broken)} What stands before it comes in.`,
          ...data.remarks,
        ];
  return { ok: true, data: { ...data, trees, remarks } };
}

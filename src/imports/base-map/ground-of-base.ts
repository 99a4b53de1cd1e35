import type { BaseFeature, BaseFound } from '../../survey/base-found';
import { printOf, type Incoming } from '../../survey/brought-in';
import type { Position } from '../../survey/document';
import type { BringIn } from '../../survey/edits/bring-in';
import type { NewShape } from '../../survey/edits/add-feature';
import type { JsonObject } from '../../survey/json';
import type { SourceCredit } from '../../survey/sources';
import { Nearness } from '../bring-in/nearness';
import { classify } from '../osm/classify';
import { practice } from '../practice';
import { namesOfWays } from './names-of-ways';
import { shapesOf } from './shapes-of';
import { tagsOf } from './tags-of';

/** The layers of OpenMapTiles that say something of the ground (openmaptiles.org/schema, from memory). */
export const groundLayers = [
  'transportation',
  'transportation_name',
  'water',
  'waterway',
  'landuse',
  'landcover',
  'aeroway',
  'building',
] as const;
/** What tells that schema from others. */
const toldBy = ['transportation', 'water'] as const;
/** Zoom from which its tiles have every path (from memory: footpaths come with the last tiles, of zoom 14). */
const leastZoom = 14;

/** Round what the ground is wanted: the nearest come in. */
export interface BaseAround {
  readonly reference: Position;
  readonly runways: readonly (readonly [Position, Position])[];
}

/** What of the base map would come into the survey, or why nothing does. */
export type GroundOfBase =
  | { readonly ok: true; readonly bringIn: BringIn }
  | { readonly ok: false; readonly because: 'no-vector' | 'schema' | 'zoom' | 'nothing' };

/** What the base map under the survey says of where one may walk, as ground uses. Null: it is no vector map. */
export function groundOfBase(
  found: BaseFound | null,
  { reference, runways }: BaseAround,
  credit: SourceCredit,
): GroundOfBase {
  if (!found) return { ok: false, because: 'no-vector' };
  if (!toldBy.every((layer) => found.layers.includes(layer))) return { ok: false, because: 'schema' };
  if (found.zoom < leastZoom) return { ok: false, because: 'zoom' };
  const nameOf = namesOfWays(found.features);
  const near = new Nearness(reference, runways);
  const seen = new Set<string>();
  const all: { readonly incoming: Incoming; readonly away: number }[] = [];
  for (const feature of found.features)
    for (const shape of shapesOf(feature.geometry)) {
      const properties = usesOf(feature, shape, nameOf);
      const source = `base-map ${feature.layer} ${printOf(shape.coordinates)}`;
      const away = near.toLines(shape);
      if (!properties || away > practice.near || seen.has(source)) continue;
      seen.add(source);
      all.push({ incoming: { source, kind: 'ground-use', shape, properties }, away });
    }
  if (all.length === 0) return { ok: false, because: 'nothing' };
  all.sort((a, b) => a.away - b.away);
  const isFootprint = ({ incoming }: (typeof all)[number]) => incoming.properties['use'] === 'building';
  const nearest = [
    ...all.filter((one) => !isFootprint(one)).slice(0, practice.mostGroundUses),
    ...all.filter(isFootprint).slice(0, practice.mostFootprints),
  ];
  return { ok: true, bringIn: { features: nearest.map(({ incoming }) => incoming), credits: [credit] } };
}

/** Members of the ground use, by the rules for the map from which the tiles are made; null where it is none. */
function usesOf(
  { layer, properties }: BaseFeature,
  shape: NewShape,
  nameOf: (shape: NewShape) => string,
): JsonObject | null {
  const isArea = shape.type === 'Polygon';
  const named = typeof properties['name'] === 'string' ? properties['name'].slice(0, 120) : '';
  if (layer === 'aeroway')
    return isArea && properties['class'] === 'aerodrome'
      ? { use: 'aerodrome', name: named, access: 'unknown' }
      : null;
  // Its height is not known (5 m stands where nobody has mapped one, from memory): a footprint, not an obstacle.
  if (layer === 'building') return isArea ? { use: 'building', name: named, access: 'unknown' } : null;
  const tags = tagsOf(layer, properties);
  if (!tags) return null;
  const name = layer === 'transportation' ? nameOf(shape) : named;
  const is = classify(name === '' ? tags : { ...tags, name }, isArea, {
    buildingHeight: practice.buildingHeight,
    southern: false,
  });
  return is.is === 'feature' && is.kind === 'ground-use' ? is.properties : null;
}

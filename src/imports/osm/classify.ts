import type { Kind } from '../../survey/kinds';
import type { JsonObject } from '../../survey/json';
import type { Use } from '../../survey/schema/places';
import { leafSeason } from '../../survey/schema/sights';
import { practice } from '../practice';
import type { Group } from '../bring-in/types';
import type { Tags } from './elements';
import { heightIn, heightOfLevels } from './heights';
import { undersideOf } from './underside';

/** What a thing on the map is to a survey. Runways are put together elsewhere. */
export type Classified =
  | {
      readonly is: 'feature';
      readonly kind: Kind;
      readonly group: Group;
      readonly properties: JsonObject;
      /** Its height is nobody's word. */
      readonly assumed: boolean;
      /** A height tag that could not be read. */
      readonly oddHeight: string | null;
      /** A tag of its underside that could not be read, or that is not below its top. */
      readonly oddUnderside: string | null;
    }
  | { readonly is: 'runway' }
  /** The airfield as a whole: it names the site. */
  | { readonly is: 'aerodrome' }
  | { readonly is: 'left-out'; readonly what: string; readonly reason: string };

export interface Assumptions {
  readonly buildingHeight: number;
  readonly southern: boolean;
}

const aeroways = ['aerodrome', 'runway', 'taxiway', 'taxilane', 'apron', 'hangar', 'terminal'];
const walls = ['wall', 'retaining_wall', 'city_wall', 'noise_barrier', 'sound_barrier'];
/** Fences that one cannot look through. From memory of how fences are mapped. */
const closedFences = [
  'wood',
  'wooden',
  'panel',
  'slatted',
  'brick',
  'concrete',
  'corrugated_metal',
  'metal_sheet',
];
const roads = [
  'motorway',
  'trunk',
  'primary',
  'secondary',
  'tertiary',
  'unclassified',
  'residential',
  'living_street',
  'service',
  'road',
].flatMap((road) => [road, `${road}_link`]);
const ways = ['footway', 'path', 'cycleway', 'pedestrian', 'steps', 'track', 'bridleway'];
/** Ways of water that nobody steps over; a stream or a ditch one does. */
const waterways = ['river', 'canal', 'riverbank', 'dock', 'boatyard'];
const railways = ['rail', 'light_rail', 'narrow_gauge', 'preserved', 'subway', 'tram', 'monorail'];
const greens = ['park', 'common', 'playground', 'dog_park', 'recreation_ground', 'village_green'];

/** A tree on its own, which maps have as a point: without a crown's width there is nothing to draw. */
export const isTree = (tags: Tags): boolean => tags['natural'] === 'tree';
export const treesLeftOut = [
  'single trees',
  'a point has no width: draw those that stand in the way as obstacles',
] as const;

/** Whether a survey could have any use for it: the rest is not even put together. */
export const isWanted = (tags: Tags): boolean =>
  (tags['building'] ?? 'no') !== 'no' ||
  aeroways.includes(tags['aeroway'] ?? '') ||
  tags['barrier'] !== undefined ||
  tags['highway'] !== undefined ||
  tags['natural'] === 'tree_row' ||
  isWood(tags) ||
  tags['amenity'] === 'parking' ||
  isWater(tags) ||
  railways.includes(tags['railway'] ?? '') ||
  greens.includes(tags['leisure'] ?? tags['landuse'] ?? '');

/** Whether a closed way with these tags is an area. Ways that are none may be closed all the same: a fence. */
export const isArea = (tags: Tags): boolean => {
  if (tags['area'] === 'no') return false;
  if (tags['area'] === 'yes') return true;
  if ((tags['building'] ?? 'no') !== 'no') return true;
  if (['aerodrome', 'apron', 'hangar', 'terminal'].includes(tags['aeroway'] ?? '')) return true;
  return (
    isWood(tags) ||
    tags['amenity'] === 'parking' ||
    (isWater(tags) && tags['waterway'] !== 'river' && tags['waterway'] !== 'canal') ||
    (tags['highway'] === undefined && greens.includes(tags['leisure'] ?? tags['landuse'] ?? ''))
  );
};

const isWater = (tags: Tags): boolean =>
  tags['natural'] === 'water' || waterways.includes(tags['waterway'] ?? '');

const isWood = (tags: Tags): boolean => tags['natural'] === 'wood' || tags['landuse'] === 'forest';

export function classify(tags: Tags, isAreaShape: boolean, assume: Assumptions): Classified {
  const aeroway = tags['aeroway'];
  if (aeroway === 'aerodrome') return { is: 'aerodrome' };
  if (aeroway === 'runway')
    return isAreaShape
      ? leftOut('runway areas', 'the runway itself comes from its centreline')
      : { is: 'runway' };
  if (aeroway === 'taxiway' || aeroway === 'taxilane')
    return isAreaShape
      ? leftOut('taxiway areas', 'the route itself comes from its centreline')
      : feature('taxi-route', 'taxi routes', { name: nameOf(tags, 'ref') });
  if (aeroway === 'apron')
    return isAreaShape
      ? feature('apron', 'aprons', { name: nameOf(tags, 'ref') })
      : leftOut('aprons', 'their outline is not closed');
  if ((tags['building'] ?? 'no') !== 'no' || aeroway === 'hangar' || aeroway === 'terminal')
    return building(tags, isAreaShape, assume);
  if (tags['barrier'] !== undefined) return barrier(tags, assume);
  if (tags['natural'] === 'tree_row')
    return isAreaShape
      ? leftOut('tree rows', 'they are drawn as areas')
      : obstacle('tree rows', tags, practice.treeRowHeight, leaves(tags, assume));
  if (isWood(tags))
    return isAreaShape
      ? obstacle('woods', tags, practice.woodHeight, leaves(tags, assume))
      : leftOut('woods', 'their outline is not closed');
  return groundUse(tags, isAreaShape);
}

function building(tags: Tags, isAreaShape: boolean, { buildingHeight }: Assumptions): Classified {
  if (!isAreaShape) return leftOut('buildings', 'their outline is not closed');
  if (tags['location'] === 'underground' || Number(tags['layer'] ?? 0) < 0)
    return leftOut('buildings', 'they are underground');
  return obstacle('buildings', tags, buildingHeight, { sight: 'solid' });
}

function barrier(tags: Tags, assume: Assumptions): Classified {
  const is = tags['barrier'] ?? '';
  if (walls.includes(is)) return obstacle('walls', tags, practice.wallHeight, { sight: 'solid' });
  if (is === 'hedge')
    return obstacle('hedges', tags, practice.hedgeHeight, { ...leaves(tags, assume), sight: 'hedge' });
  if (is !== 'fence')
    return leftOut('other barriers', 'gates, kerbs, bollards and the like hide no aircraft');
  const closed = closedFences.includes(tags['fence_type'] ?? tags['material'] ?? '');
  return obstacle('fences', tags, practice.fenceHeight, { sight: closed ? 'solid' : 'mesh' });
}

function leaves(tags: Tags, { southern }: Assumptions): JsonObject {
  const evergreen = tags['leaf_cycle'] === 'evergreen' || tags['leaf_type'] === 'needleleaved';
  const months = southern ? leafSeason.south.toSorted((a, b) => a - b) : leafSeason.north;
  return { sight: 'leaf', leafMonths: evergreen ? practice.allMonths : months };
}

/** `heightFrom`: "map", "levels" or "assumed", so that the panel can say what a figure rests on. */
function obstacle(group: Group, tags: Tags, assumed: number, properties: JsonObject): Classified {
  const stated = tags['height'] ?? tags['est_height'] ?? tags['building:height'];
  const read = heightIn(stated);
  const levels = heightOfLevels(tags['building:levels'] ?? tags['levels']);
  const heightFrom = read !== null ? 'map' : levels !== null ? 'levels' : 'assumed';
  // What a wall or a hedge says of an underside is nobody's habit.
  const { height, underside, odd } = undersideOf(group === 'buildings' ? tags : {}, read, levels ?? assumed);
  return {
    is: 'feature',
    kind: 'obstacle',
    group,
    properties: {
      name: nameOf(tags, 'addr:housename'),
      height,
      heightFrom,
      ...(underside > 0 ? { underside } : {}),
      ...properties,
    },
    assumed: heightFrom === 'assumed',
    oddHeight: stated !== undefined && read === null ? stated.slice(0, 40) : null,
    oddUnderside: odd,
  };
}

function groundUse(tags: Tags, isAreaShape: boolean): Classified {
  const highway = tags['highway'];
  const as = (use: Use, group: Group) =>
    feature('ground-use', group, { use, name: nameOf(tags, 'ref'), access: accessOnFoot(tags) });
  if (highway !== undefined) {
    if ((tags['tunnel'] ?? 'no') !== 'no') return leftOut('roads and paths', 'they run in a tunnel');
    if (isMotorway(tags)) return as('motorway', 'roads');
    if (roads.includes(highway)) return as('road', 'roads');
    if (ways.includes(highway)) return as('path', 'paths');
    return leftOut('roads and paths', 'they are being built or planned, or no road or path');
  }
  if (railways.includes(tags['railway'] ?? ''))
    return isBelow(tags) ? leftOut('railways', 'they run in a tunnel') : as('rail', 'railways');
  if (isWater(tags))
    return isBelow(tags) ? leftOut('water', 'it runs in a culvert or tunnel') : as('water', 'water');
  if (!isAreaShape) return leftOut('parking places and greens', 'their outline is not closed');
  if (tags['amenity'] !== 'parking') return as('green', 'greens');
  return tags['parking'] === 'underground'
    ? leftOut('parking places', 'they are underground')
    : as('parking', 'parking');
}

const isBelow = (tags: Tags): boolean => (tags['tunnel'] ?? 'no') !== 'no';

/** Motorways, and trunk roads that nobody has made a footway along. */
function isMotorway(tags: Tags): boolean {
  const highway = tags['highway'] ?? '';
  if (/^motorway/.test(highway) || tags['motorroad'] === 'yes') return true;
  const walked =
    ['yes', 'designated', 'permissive'].includes(tags['foot'] ?? '') ||
    /^(yes|both|left|right|separate)$/.test(tags['sidewalk'] ?? tags['sidewalk:both'] ?? '');
  return /^trunk/.test(highway) && !walked;
}

/** What the map says of people on foot, in the words of a survey; nothing said is unknown. */
function accessOnFoot(tags: Tags): string {
  if (tags['motorroad'] === 'yes' || /^motorway/.test(tags['highway'] ?? '')) return 'forbidden';
  switch (tags['foot'] ?? tags['access']) {
    case 'yes':
    case 'designated':
    case 'public':
    case 'official':
      return 'public';
    case 'permissive':
      return 'permitted';
    case 'customers':
    case 'permit':
    case 'destination':
      return 'ask';
    case 'no':
    case 'private':
      return 'forbidden';
    default:
      return 'unknown';
  }
}

const nameOf = (tags: Tags, also: string): string =>
  (tags['name'] ?? tags[also] ?? '').replace(/\s+/g, ' ').trim().slice(0, 120);

const feature = (kind: Kind, group: Group, properties: JsonObject): Classified => ({
  is: 'feature',
  kind,
  group,
  properties,
  assumed: false,
  oddHeight: null,
  oddUnderside: null,
});

const leftOut = (what: string, reason: string): Classified => ({ is: 'left-out', what, reason });

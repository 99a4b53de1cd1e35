import type { Tags } from '../osm/elements';

/** Classes of the layer "transportation" that are roads, and the tag of the map that they were made from. */
const roads: Readonly<Record<string, string>> = {
  motorway: 'motorway',
  trunk: 'trunk',
  primary: 'primary',
  secondary: 'secondary',
  tertiary: 'tertiary',
  minor: 'unclassified',
  service: 'service',
  track: 'track',
};
const paths = ['footway', 'path', 'cycleway', 'pedestrian', 'steps', 'bridleway'];
const greens: Readonly<Record<string, string>> = {
  park: 'park',
  recreation_ground: 'recreation_ground',
  village_green: 'village_green',
  playground: 'playground',
};

/**
 * A feature of OpenMapTiles in the tags of the map that it was made from, as far as they matter for the ground; null
 * where it is nothing of that. What is being built, ferries, race tracks and platforms are not.
 */
export function tagsOf(layer: string, properties: Readonly<Record<string, unknown>>): Tags | null {
  const text = (key: string): string => {
    const value = properties[key];
    return typeof value === 'string' ? value : '';
  };
  const [of, sub] = [text('class'), text('subclass')];
  const tunnel: Record<string, string> = text('brunnel') === 'tunnel' ? { tunnel: 'yes' } : {};
  switch (layer) {
    case 'transportation': {
      if (of === 'rail' || of === 'transit') return { railway: sub === '' ? 'rail' : sub, ...tunnel };
      const highway = of === 'path' ? (sub === '' ? 'path' : paths.find((p) => p === sub)) : roads[of];
      if (highway === undefined) return null;
      return { highway, ...tunnel, ...said('access', text('access')), ...said('foot', text('foot')) };
    }
    case 'water':
      return { natural: 'water', ...tunnel };
    case 'waterway':
      return of === 'river' || of === 'canal' ? { waterway: of, ...tunnel } : null;
    case 'landuse':
    case 'landcover': {
      const green = greens[sub] ?? greens[of];
      return green === undefined ? null : { leisure: green };
    }
    default:
      return null;
  }
}

/** Tiles say of access only that there is none. */
const said = (key: string, value: string): Record<string, string> => (value === '' ? {} : { [key]: value });

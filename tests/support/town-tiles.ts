import { GeoJSONVT } from '@maplibre/geojson-vt';
import { fromGeojsonVt } from '@maplibre/vt-pbf';

type Corner = readonly [number, number];

const feature = (type: 'LineString' | 'Polygon', coordinates: unknown, properties: object) => ({
  type: 'Feature',
  properties,
  geometry: { type, coordinates },
});
const lane: readonly Corner[] = [
  [18.15, 50.9255],
  [18.16, 50.9258],
  [18.17, 50.9261],
  [18.185, 50.9265],
];
const ring = (west: number, south: number, east: number, north: number): readonly Corner[] => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
  [west, south],
];

/** A lane with its name, a pond and a green, in the layers of OpenMapTiles (openmaptiles.org/schema, from memory). */
const layers = {
  transportation: [feature('LineString', lane, { class: 'minor' })],
  transportation_name: [feature('LineString', lane, { class: 'minor', name: 'Pond Lane' })],
  water: [feature('Polygon', [ring(18.163, 50.9235, 18.166, 50.925)], { class: 'lake' })],
  landcover: [
    feature('Polygon', [ring(18.168, 50.93, 18.172, 50.9315)], { class: 'grass', subclass: 'park' }),
  ],
} as const;

const indexes = Object.entries(layers).map(([layer, features]) => ({
  layer,
  index: new GeoJSONVT({ type: 'FeatureCollection', features } as unknown as GeoJSON.FeatureCollection, {
    maxZoom: 14,
    indexMaxZoom: 4,
    tolerance: 0,
  }),
}));

export function townTile(z: number, x: number, y: number): Uint8Array {
  const tiles = indexes.flatMap(({ layer, index }) => {
    const tile = index.getTile(z, x, y);
    return tile ? [[layer, tile] as const] : [];
  });
  return fromGeojsonVt(Object.fromEntries(tiles), { version: 2, extent: 4096 });
}

export const townTileJson = (origin: string) => ({
  tilejson: '3.0.0',
  tiles: [`${origin}/town/{z}/{x}/{y}.pbf`],
  maxzoom: 14,
  attribution: 'Invented town office',
  vector_layers: Object.keys(layers).map((id) => ({ id, fields: {} })),
});

export const townStyle = {
  version: 8,
  sources: { town: { type: 'vector', url: './town.json' } },
  layers: [
    { id: 'page', type: 'background', paint: { 'background-color': '#eeeeee' } },
    {
      id: 'water',
      type: 'fill',
      source: 'town',
      'source-layer': 'water',
      paint: { 'fill-color': '#6688cc' },
    },
    {
      id: 'ways',
      type: 'line',
      source: 'town',
      'source-layer': 'transportation',
      paint: { 'line-color': '#884422', 'line-width': 4 },
    },
  ],
};

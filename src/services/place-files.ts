import type { PlaceLists } from '../exports/sweep/place-lists';
import type { PlaceFile } from '../ports/place-search';
import type { FileKind } from '../storage/files';

interface Exported extends FileKind {
  readonly name: string;
  readonly make: (lists: PlaceLists) => Promise<string | ArrayBuffer>;
}

/** What is taken along: each maker is loaded when it is asked for. */
export const placeFiles: Readonly<Record<PlaceFile, Exported>> = {
  table: {
    name: 'places.csv',
    mediaType: 'text/csv',
    extensions: ['.csv'],
    description: 'Table (CSV)',
    make: async (lists) => (await import('../exports/sweep/place-table')).placeTable(lists),
  },
  waypoints: {
    name: 'places.gpx',
    mediaType: 'application/gpx+xml',
    extensions: ['.gpx'],
    description: 'Waypoints (GPX)',
    make: async (lists) => (await import('../exports/sweep/place-waypoints')).placeWaypoints(lists),
  },
  contours: {
    name: 'places-contours.geojson',
    mediaType: 'application/geo+json',
    extensions: ['.geojson'],
    description: 'Contours (GeoJSON)',
    make: async (lists) => (await import('../exports/sweep/place-contours')).placeContours(lists),
  },
  raster: {
    name: 'places.tif',
    mediaType: 'image/tiff',
    extensions: ['.tif'],
    description: 'Raster (GeoTIFF)',
    make: async (lists) => (await import('../exports/sweep/place-raster')).placeRaster(lists),
  },
};

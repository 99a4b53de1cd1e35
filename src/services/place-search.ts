import type { PlaceLists } from '../exports/sweep/place-lists';
import { messageOf } from '../keeping/survey-files';
import type { PlaceFile, PlaceSearch } from '../ports/place-search';
import { saveFile, type FileKind } from '../storage/files';

interface Exported extends FileKind {
  readonly name: string;
  readonly make: (lists: PlaceLists) => Promise<string | ArrayBuffer>;
}

/** What is taken along: each maker is loaded when it is asked for. */
const files: Readonly<Record<PlaceFile, Exported>> = {
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

/** Looking for places to stand, in this browser's workers. */
export class WorkersPlaceSearch implements PlaceSearch {
  async sweep() {
    return (await import('../sweep/workers')).sweepClient();
  }

  async errands() {
    return (await import('../sweep/errand-workers')).errandClient;
  }

  async save(file: PlaceFile, lists: PlaceLists): Promise<string | null> {
    const { make, name, ...kind } = files[file];
    try {
      const content = make(lists).then((made) => new Blob([made], { type: kind.mediaType }));
      await saveFile(content, name, kind, null);
      return null;
    } catch (error) {
      return `${name} could not be saved: ${messageOf(error)}.`;
    }
  }
}

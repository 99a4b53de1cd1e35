import { airfieldAt } from './airfield-at';
import { airfieldColumns } from './airfield-columns';
import { catalogueFileSchema } from './columns';
import { fault } from './consistent';
import { searchTextOf } from './search-text';
import type { Catalogue, Loaded } from './types';
import { begins, damaged, fitting } from './unpack';

const what = 'The airfield catalogue';

/** The stored file (already parsed JSON) -> the catalogue, or why it cannot be used. Never throws. */
export function decodeCatalogue(json: unknown): Loaded<Catalogue> {
  const file = fitting(what, catalogueFileSchema, json);
  if (!file.ok) return file;
  const columns = airfieldColumns(file.value);
  const wrong = typeof columns === 'string' ? columns : fault(columns);
  if (typeof columns === 'string' || wrong !== null) return damaged(what, wrong ?? '');
  return {
    ok: true,
    value: {
      size: columns.names.length,
      airfieldAt: (index) => airfieldAt(columns, index),
      searchText: searchTextOf(columns),
      fields: {
        builtBy: file.value.builtBy,
        lat: columns.lat,
        lng: columns.lng,
        elevation: columns.elevation,
        firstRunway: begins(columns.runways),
      },
    },
  };
}

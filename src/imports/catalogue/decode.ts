import { airfieldAt } from './airfield-at';
import { catalogueFileSchema, perDegree, placesPerDegree, type CatalogueFile } from './columns';
import { fault, type Columns } from './consistent';
import { fromDigits } from './digits';
import { searchTextOf } from './search-text';
import type { Catalogue, Loaded } from './types';
import { begins, damaged, fitting, lines, sums } from './unpack';

const what = 'The airfield catalogue';

/** The stored file (already parsed JSON) -> the catalogue, or why it cannot be used. Never throws. */
export function decodeCatalogue(json: unknown): Loaded<Catalogue> {
  const file = fitting(what, catalogueFileSchema, json);
  if (!file.ok) return file;
  const columns = columnsOf(file.value);
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
        firstRunway: begins(file.value.airfields.runways),
      },
    },
  };
}

/** Ten times what there is in the world: a damaged count must not fill the memory. */
const mostAirfields = 1e6;

function spread(runs: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i + 1 < runs.length; i += 2) {
    const count = Math.min(runs[i + 1] ?? 0, mostAirfields - out.length);
    for (let k = 0; k < count; k++) out.push(runs[i] ?? 0);
  }
  return out;
}

const toMillionths = (n: number) => n * (perDegree / placesPerDegree);

/** The columns, or which of them cannot be read. */
function columnsOf(file: CatalogueFile): Columns | string {
  const { airfields } = file;
  const count = airfields.runways.length;
  const lat = fromDigits(airfields.lat, count);
  const lng = fromDigits(airfields.lng, count);
  const elevation = fromDigits(airfields.elevation, count);
  if (!lat || !lng || !elevation)
    return `the digits of lat, lng or elevation are not those of ${count} airfields`;
  const towns = lines(airfields.towns, lat);
  return {
    file,
    kinds: spread(airfields.kindRuns),
    regions: spread(airfields.regionRuns),
    names: lines(airfields.names, lat).map((line, i) =>
      line.startsWith('=') ? `${towns[i] ?? ''}${line.slice(1)}` : line,
    ),
    towns,
    icao: lines(airfields.icao, lat),
    iata: lines(airfields.iata, lat),
    local: lines(airfields.local, lat),
    lat: sums(lat).map(toMillionths),
    lng: sums(lng).map(toMillionths),
    elevation,
  };
}

import { perDegree, type CatalogueFile } from './columns';
import { airfieldKinds } from './types';

/** The file's columns made readable by place: runs spread, digits read, differences summed, texts split. */
export interface Columns {
  readonly file: CatalogueFile;
  readonly kinds: readonly number[];
  readonly regions: readonly number[];
  readonly names: readonly string[];
  readonly towns: readonly string[];
  readonly icao: readonly string[];
  readonly iata: readonly string[];
  readonly local: readonly string[];
  /** Millionths of a degree. */
  readonly lat: readonly number[];
  readonly lng: readonly number[];
  /** Feet above mean sea level. */
  readonly elevation: readonly number[];
}

/**
 * What is wrong with the columns, or null. Airfields are made from them only when a person asks for one, so
 * everything that could fail then is found here, at once.
 */
export function fault(columns: Columns): string | null {
  const { runways, located, regions } = columns.file.airfields;
  const airfields = columns.names.length;
  return (
    unequal('airfields', airfields, [
      ['kinds', columns.kinds],
      ['regions', columns.regions],
      ['towns', columns.towns],
      ['icao', columns.icao],
      ['iata', columns.iata],
      ['local', columns.local],
      ['runways', runways],
      ['located', located],
    ]) ??
    outside('airfields.runways', runways, mostRunways) ??
    outside('airfields.located', located, mostRunways) ??
    (located.every((count, i) => count <= (runways[i] ?? 0)) ? null : 'located and runways do not add up') ??
    outside('kinds', columns.kinds, airfieldKinds.length - 1) ??
    outside('regions', columns.regions, regions.length - 1) ??
    tooFar('lat', columns.lat, 90) ??
    tooFar('lng', columns.lng, 180)
  );
}

/** Of one airfield: a damaged count must not fill the memory. */
const mostRunways = 1000;

export function unequal(
  what: string,
  count: number,
  columns: readonly (readonly [string, readonly unknown[]])[],
): string | null {
  const odd = columns.find(([, column]) => column.length !== count);
  return odd ? `${what}.${odd[0]} has ${odd[1].length} entries, ${count} were expected` : null;
}

/** Whole numbers from 0 to `last`. */
export function outside(what: string, column: readonly number[], last: number): string | null {
  const odd = column.find((n) => n < 0 || n > last);
  return odd === undefined ? null : `${what} holds ${odd}`;
}

export function tooFar(what: string, column: readonly number[], degrees: number): string | null {
  const odd = column.find((n) => Math.abs(n) > degrees * perDegree);
  return odd === undefined ? null : `${what} holds ${odd / perDegree} degrees`;
}

import { flagKinds, locatedEnds, perDegree, type CatalogueFile } from './columns';
import { airfieldKinds } from './types';

/** Place of the airfield or runway, place in a list of words, figure. */
export type Triple = readonly [number, number, number];

/** The file's columns made readable by place: runs spread, differences summed, texts split. */
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
  readonly firstRunway: readonly number[];
  readonly firstEnd: readonly number[];
  readonly designators: readonly string[];
  readonly endLat: readonly number[];
  readonly endLng: readonly number[];
  /** By place of the runway, and of the airfield. */
  readonly flags: ReadonlyMap<number, readonly Triple[]>;
  readonly frequencies: ReadonlyMap<number, readonly Triple[]>;
}

/**
 * What is wrong with the columns, or null. Airfields are made from them only when a person asks for one, so
 * everything that could fail then is found here, at once.
 */
export function fault(columns: Columns): string | null {
  const { file } = columns;
  const airfields = columns.names.length;
  const runways = file.runways.length.length;
  const ends = columns.designators.length;
  return (
    unequal('airfields', airfields, [
      ['kinds', columns.kinds],
      ['regions', columns.regions],
      ['towns', columns.towns],
      ['icao', columns.icao],
      ['iata', columns.iata],
      ['local', columns.local],
      ['lat', columns.lat],
      ['lng', columns.lng],
      ['elevation', file.airfields.elevation],
      ['runways', file.airfields.runways],
    ]) ??
    unequal('runways', runways, [
      ['width', file.runways.width],
      ['surface', file.runways.surface],
      ['located', file.runways.located],
    ]) ??
    unequal('ends', ends, [
      ['lat', file.ends.lat],
      ['lng', file.ends.lng],
      ['elevation', file.ends.elevation],
      ['displaced', file.ends.displaced],
    ]) ??
    outside('airfields.runways', file.airfields.runways, runways) ??
    (columns.firstRunway.at(-1) === runways ? null : 'runways and airfields do not add up') ??
    (columns.firstEnd.at(-1) === ends ? null : 'ends and runways do not add up') ??
    outside('kinds', columns.kinds, airfieldKinds.length - 1) ??
    outside('regions', columns.regions, file.airfields.regions.length - 1) ??
    outside('surface', file.runways.surface, file.surfaces.length - 1) ??
    outside('located', file.runways.located, locatedEnds.length - 1) ??
    tooFar('lat', columns.lat, 90) ??
    tooFar('lng', columns.lng, 180) ??
    tooFar('ends.lat', columns.endLat, 90) ??
    tooFar('ends.lng', columns.endLng, 180) ??
    outside('flags', [...columns.flags.keys()], runways - 1) ??
    outside('flags', secondOf(columns.flags), flagKinds.length - 1) ??
    outside('frequencies', [...columns.frequencies.keys()], airfields - 1) ??
    outside('frequencies', secondOf(columns.frequencies), file.uses.length - 1)
  );
}

const secondOf = (triples: Columns['flags']) =>
  [...triples.values()].flatMap((list) => list.map((t) => t[1]));

function unequal(what: string, count: number, columns: readonly (readonly [string, readonly unknown[]])[]) {
  const odd = columns.find(([, column]) => column.length !== count);
  return odd ? `${what}.${odd[0]} has ${odd[1].length} entries, ${count} were expected` : null;
}

/** Whole numbers from 0 to `last`. */
function outside(what: string, column: readonly number[], last: number) {
  const odd = column.find((n) => n < 0 || n > last);
  return odd === undefined ? null : `${what} holds ${odd}`;
}

function tooFar(what: string, column: readonly number[], degrees: number) {
  const odd = column.find((n) => Math.abs(n) > degrees * perDegree);
  return odd === undefined ? null : `${what} holds ${odd / perDegree} degrees`;
}

import { feetToMetres } from '../../units/length';
import { flagKinds, locatedEnds, perDegree } from './columns';
import type { Columns } from './consistent';
import { impliedDesignator } from './implied-designator';
import {
  airfieldKinds,
  type Airfield,
  type CatalogueEnd,
  type CatalogueRunway,
  type RunwayFlag,
} from './types';

/** Reads a column at a place that `fault` has found to be there. */
function at<T>(column: readonly T[], index: number): T {
  if (!(index >= 0 && index < column.length))
    throw new RangeError(`expected a place from 0 to ${column.length - 1}, got ${index}`);
  return column[index] as T;
}

/** One airfield made from its columns. */
export function airfieldAt(columns: Columns, index: number): Airfield {
  const region = at(columns.file.airfields.regions, at(columns.regions, index));
  const icao = at(columns.icao, index) || null;
  const runways: CatalogueRunway[] = [];
  for (let r = at(columns.firstRunway, index); r < at(columns.firstRunway, index + 1); r++)
    runways.push(runwayAt(columns, index, r));
  return {
    index,
    name: at(columns.names, index),
    town: at(columns.towns, index),
    region,
    country: region.slice(0, 2),
    icao,
    iata: at(columns.iata, index) || null,
    localCodes: localCodesAt(columns, index),
    kind: at(airfieldKinds, at(columns.kinds, index)),
    position: [at(columns.lng, index) / perDegree, at(columns.lat, index) / perDegree],
    elevation: feetToMetres(at(columns.file.airfields.elevation, index)),
    frequencies: (columns.frequencies.get(index) ?? []).map(([, use, khz]) => ({
      use: at(columns.file.uses, use),
      mhz: khz / 1000,
    })),
    runways,
  };
}

/** The codes that are no ICAO or IATA code; a star stands for the ICAO code without its first letter. */
export function localCodesAt(columns: Columns, index: number): string[] {
  const line = at(columns.local, index);
  if (line === '') return [];
  return line.split(' ').map((code) => (code === '*' ? at(columns.icao, index).slice(1) : code));
}

function runwayAt(columns: Columns, airfield: number, r: number): CatalogueRunway {
  const { length, width, surface, located } = columns.file.runways;
  const first = at(columns.firstEnd, r);
  const [a, b] = at(locatedEnds, at(located, r));
  const end0 = a ? endAt(columns, airfield, first, null) : null;
  const end1 = b ? endAt(columns, airfield, first + (a ? 1 : 0), end0) : null;
  return {
    length: feetToMetres(at(length, r)) || null,
    width: feetToMetres(at(width, r)) || null,
    surface: at(columns.file.surfaces, at(surface, r)),
    ends: [end0, end1],
    flags: (columns.flags.get(r) ?? []).map(([, kind, figure]) => flagOf(at(flagKinds, kind), figure)),
  };
}

function endAt(columns: Columns, airfield: number, e: number, other: CatalogueEnd | null): CatalogueEnd {
  const { elevation, displaced } = columns.file.ends;
  const word = at(columns.designators, e);
  const above = at(elevation, e);
  return {
    designator: word === '=' && other !== null ? (impliedDesignator(other.designator) ?? '') : word,
    position: [at(columns.endLng, e) / perDegree, at(columns.endLat, e) / perDegree],
    elevation: above === null ? null : feetToMetres(at(columns.file.airfields.elevation, airfield) + above),
    displaced: feetToMetres(at(displaced, e)),
  };
}

function flagOf(kind: RunwayFlag['kind'], figure: number): RunwayFlag {
  switch (kind) {
    case 'zero-length':
      return { kind };
    case 'length-off':
    case 'at-thresholds':
      return { kind, measured: figure };
    case 'far-away':
      return { kind, away: figure };
    case 'ends-swapped':
    case 'designator-off':
      return { kind, magnetic: figure };
  }
}

import { feetToMetres } from '../../units/length';
import { perDegree } from './columns';
import type { Columns } from './consistent';
import { airfieldKinds, type Airfield } from './types';
import { at } from './unpack';

/** One airfield made from its columns. */
export function airfieldAt(columns: Columns, index: number): Airfield {
  const { airfields } = columns.file;
  const region = at(airfields.regions, at(columns.regions, index));
  return {
    index,
    name: at(columns.names, index),
    town: at(columns.towns, index),
    region,
    country: region.slice(0, 2),
    icao: at(columns.icao, index) || null,
    iata: at(columns.iata, index) || null,
    localCodes: localCodesAt(columns, index),
    kind: at(airfieldKinds, at(columns.kinds, index)),
    position: [at(columns.lng, index) / perDegree, at(columns.lat, index) / perDegree],
    elevation: feetToMetres(at(columns.elevation, index)),
    runwayCount: at(airfields.runways, index),
    locatedCount: at(airfields.located, index),
  };
}

/** The codes that are no ICAO or IATA code; a star stands for the ICAO code without its first letter. */
export function localCodesAt(columns: Columns, index: number): string[] {
  const line = at(columns.local, index);
  if (line === '') return [];
  return line.split(' ').map((code) => (code === '*' ? at(columns.icao, index).slice(1) : code));
}

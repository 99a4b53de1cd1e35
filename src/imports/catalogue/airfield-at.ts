import { feetToMetres } from '../../units/length';
import type { Columns } from './airfield-columns';
import { perDegree } from './columns';
import { airfieldKinds, type Airfield } from './types';
import { at } from './unpack';
import { fromUsualCase } from './usual-case';

/** One airfield made from its columns. */
export function airfieldAt(columns: Columns, index: number): Airfield {
  const region = at(columns.regionWords, at(columns.regions, index));
  return {
    index,
    name: fromUsualCase(at(columns.names, index)),
    town: fromUsualCase(at(columns.towns, index)),
    region,
    country: region.slice(0, 2),
    icao: at(columns.icao, index) || null,
    iata: iataAt(columns, index) || null,
    localCodes: localCodesAt(columns, index),
    kind: at(airfieldKinds, at(columns.kinds, index)),
    position: [at(columns.lng, index) / perDegree, at(columns.lat, index) / perDegree],
    elevation: feetToMetres(at(columns.elevation, index)),
    runwayCount: at(columns.runways, index),
    locatedCount: at(columns.located, index),
  };
}

/** A star stands for the ICAO code without its first letter. */
const fromIcao = '*';

/** Empty where there is none. */
export function iataAt(columns: Columns, index: number): string {
  const code = at(columns.iata, index);
  return code === fromIcao ? at(columns.icao, index).slice(1) : code;
}

/** The codes that are no ICAO or IATA code; an at sign stands for the letters of the region (TX of US-TX). */
export function localCodesAt(columns: Columns, index: number): string[] {
  const line = at(columns.local, index);
  if (line === '') return [];
  const letters = at(columns.regionWords, at(columns.regions, index)).slice(3);
  return line
    .split(' ')
    .map((code) => (code === fromIcao ? at(columns.icao, index).slice(1) : code.replace('@', letters)));
}

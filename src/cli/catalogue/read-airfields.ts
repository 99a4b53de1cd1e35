import type { Position } from '../../survey/document';
import type { AirfieldRow } from '../../imports/catalogue/encode';
import { inCatalogueOrder } from '../../imports/catalogue/order';
import { type AirfieldKind, type CatalogueEnd, type CatalogueFrequency } from '../../imports/catalogue/types';
import { feetToMetres } from '../../units/length';
import { codesOf } from './codes';
import { degrees, text, wholeNumber } from './values';
import type { Query, Row } from './open-data';

const kinds: Readonly<Record<string, AirfieldKind>> = {
  large_airport: 'large-airport',
  medium_airport: 'medium-airport',
  small_airport: 'small-airport',
  seaplane_base: 'seaplane-base',
  heliport: 'heliport',
};

const uses = ['atis', 'tower', 'ground', 'clearance', 'unicom', 'approach', 'departure'] as const;

/** A runway's row as published: what the checks need beside what the catalogue keeps. */
export type RunwayRow = AirfieldRow['runways'][number] & {
  /** Degrees from true north as the data state it, one an end, null when that end is not located. */
  readonly headings: readonly [number | null, number | null];
};
export type ReadAirfield = Omit<AirfieldRow, 'runways'> & { readonly runways: readonly RunwayRow[] };

/** The airfields of the data, without closed ones, in the order in which a search shall find them. */
export function readAirfields(query: Query): ReadAirfield[] {
  const runways = readRunways(query);
  const frequencies = new Map(
    query('select * from frequencies').map((row) => [wholeNumber(row['airport_id']), frequenciesOf(row)]),
  );
  const airfields = query("select * from airports where type not in ('closed', 'balloonport')")
    .filter((row) => !isDuplicate(text(row['name'])))
    .map((row): ReadAirfield => {
      const id = wholeNumber(row['id']);
      return {
        name: text(row['name']),
        town: text(row['city']),
        region: text(row['state']),
        ...codesOf(text(row['icao']), text(row['iata']), text(row['faa']), text(row['local'])),
        kind: kinds[text(row['type'])] ?? 'small-airport',
        position: positionOf(row['longitude'], row['latitude']),
        elevation: feetToMetres(wholeNumber(row['elevation_ft'])),
        frequencies: frequencies.get(id) ?? [],
        runways: runways.get(id) ?? [],
      };
    })
    .filter(isForPhotographers);
  return inCatalogueOrder(airfields);
}

/**
 * Thousands of hospital pads and roofs with nothing but a national number would make a third of the file; a
 * heliport stays when it has an ICAO or IATA code or a located runway.
 */
const isForPhotographers = ({ kind, icao, iata, runways }: ReadAirfield) =>
  kind !== 'heliport' ||
  icao !== null ||
  iata !== null ||
  runways.some((r) => r.ends[0] !== null && r.ends[1] !== null);

/** The data's editors mark a second entry of one airfield by "(Duplicate)" before its name. */
const isDuplicate = (name: string) => /^\W*duplicate\W/i.test(name);

const positionOf = (lng: Row[string] | undefined, lat: Row[string] | undefined): Position => [
  degrees(lng),
  degrees(lat),
];

function frequenciesOf(row: Row): CatalogueFrequency[] {
  return uses.flatMap((use) => {
    const mhz = Number(row[use] ?? Number.NaN);
    // The survey file takes 0.1 to 1000 MHz; anything else is no frequency.
    return mhz >= 0.1 && mhz <= 1000 ? [{ use, mhz: Math.round(mhz * 1000) / 1000 }] : [];
  });
}

function readRunways(query: Query): Map<number, RunwayRow[]> {
  const ends = new Map<number, [Row | null, Row | null]>();
  for (const row of query('select * from runway_ends order by id')) {
    const runway = wholeNumber(row['runway_id']);
    const pair = ends.get(runway) ?? [null, null];
    // The data number a runway's ends 1 and 2 in the last digit of their id.
    pair[wholeNumber(row['id']) % 10 === 2 ? 1 : 0] = row;
    ends.set(runway, pair);
  }
  const runways = new Map<number, RunwayRow[]>();
  for (const row of query('select * from runways order by id')) {
    const [a, b] = ends.get(wholeNumber(row['id'])) ?? [null, null];
    const surface = text(row['surface']);
    const airport = wholeNumber(row['airport_id']);
    const list = runways.get(airport) ?? [];
    list.push({
      length: feetToMetres(wholeNumber(row['length_ft'])) || null,
      width: feetToMetres(wholeNumber(row['width_ft'])) || null,
      surface: surface === 'unknown' ? '' : surface,
      ends: [a && endOf(a), b && endOf(b)],
      headings: [a && Number(a['heading_degT']), b && Number(b['heading_degT'])],
      flags: [],
    });
    runways.set(airport, list);
  }
  return runways;
}

function endOf(row: Row): CatalogueEnd {
  const elevation = row['elevation_ft'];
  return {
    designator: text(row['ident']).toUpperCase(),
    position: positionOf(row['longitude_deg'], row['latitude_deg']),
    elevation: elevation === null || elevation === undefined ? null : feetToMetres(wholeNumber(elevation)),
    displaced: feetToMetres(wholeNumber(row['displaced_threshold_ft'])),
  };
}

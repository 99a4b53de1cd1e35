import type { Position } from '../../survey/document';
import { feetToMetres } from '../../units/length';
import type { CatalogueEnd, CatalogueRunway } from '../catalogue/types';
import type { Csv } from '../tables/csv';
import { decimalMarkOf, numberIn, type DecimalMark } from '../tables/decimal-mark';
import { isPlace } from '../osm/elements';

/** An airport's row: what a survey takes of it. */
export interface AirportRow {
  readonly ident: string;
  readonly name: string;
  readonly icao: string | null;
  readonly position: Position;
  /** m above mean sea level, null when the table says nothing. */
  readonly elevation: number | null;
}

export interface RunwayRow extends CatalogueRunway {
  readonly airport: string;
  readonly closed: boolean;
  readonly headings: readonly [number | null, number | null];
  /** The table's own key of the row. */
  readonly id: string;
}

export type OpenDataTable =
  | { readonly table: 'airports'; readonly rows: readonly AirportRow[]; readonly left: number }
  | { readonly table: 'runways'; readonly rows: readonly RunwayRow[]; readonly left: number };

type Get = (column: string) => string;

/** Which of the two tables a first row is; null for any other. */
function openDataTableOf(first: readonly string[]): OpenDataTable['table'] | null {
  const has = (...names: readonly string[]) => names.every((name) => first.includes(name));
  if (has('airport_ident', 'le_latitude_deg', 'le_longitude_deg')) return 'runways';
  return has('ident', 'latitude_deg', 'longitude_deg', 'elevation_ft') ? 'airports' : null;
}

/** The tables `airports.csv` and `runways.csv` of the open airport data set, by the names of their columns. */
export function readOpenDataTable(csv: Csv): OpenDataTable | null {
  const [first, ...rest] = csv.rows;
  const table = openDataTableOf(first?.cells ?? []);
  if (!first || table === null) return null;
  const index = new Map(first.cells.map((name, i) => [name, i]));
  const numeric = [...index].filter(([name]) => /_(deg|ft|degT)$/.test(name)).map(([, i]) => i);
  const mark = decimalMarkOf(
    rest.slice(0, 2000).flatMap(({ cells }) => numeric.map((i) => cells[i] ?? '')),
    csv.delimiter,
  );
  const read = <T>(row: (get: Get, mark: DecimalMark) => T | null) => {
    const rows = rest.map(({ row: at, cells }) =>
      csv.unclear.has(at) ? null : row((column) => cells[index.get(column) ?? -1] ?? '', mark),
    );
    const usable = rows.filter((r) => r !== null);
    return { rows: usable, left: rows.length - usable.length };
  };
  return table === 'airports' ? { table, ...read(airportRow) } : { table, ...read(runwayRow) };
}

function airportRow(get: Get, mark: DecimalMark): AirportRow | null {
  const position = placeIn(get('longitude_deg'), get('latitude_deg'), mark);
  const ident = get('ident').toUpperCase();
  if (!position || ident === '') return null;
  const codes = [get('icao_code'), get('gps_code'), ident].map((code) => code.toUpperCase());
  return {
    ident,
    name: get('name').slice(0, 120),
    icao: codes.find((code) => /^[A-Z]{4}$/.test(code)) ?? null,
    position,
    elevation: metresIn(get('elevation_ft'), mark),
  };
}

function runwayRow(get: Get, mark: DecimalMark): RunwayRow | null {
  const airport = get('airport_ident').toUpperCase();
  if (airport === '') return null;
  const end = (side: 'le' | 'he'): CatalogueEnd | null => {
    const position = placeIn(get(`${side}_longitude_deg`), get(`${side}_latitude_deg`), mark);
    return (
      position && {
        designator: get(`${side}_ident`).toUpperCase().slice(0, 8),
        position,
        elevation: metresIn(get(`${side}_elevation_ft`), mark),
        displaced: metresIn(get(`${side}_displaced_threshold_ft`), mark) ?? 0,
      }
    );
  };
  const positive = (column: string) => {
    const m = metresIn(get(column), mark);
    return m !== null && m > 0 ? m : null;
  };
  return {
    airport,
    id: get('id') || `${airport} ${get('le_ident')}`,
    closed: /^(1|true|yes)$/i.test(get('closed')),
    length: positive('length_ft'),
    width: positive('width_ft'),
    surface: surfaceIn(get('surface')),
    ends: [end('le'), end('he')],
    headings: [numberIn(get('le_heading_degT'), mark), numberIn(get('he_heading_degT'), mark)],
    flags: [],
  };
}

function placeIn(lng: string, lat: string, mark: DecimalMark): Position | null {
  const [x, y] = [numberIn(lng, mark), numberIn(lat, mark)];
  if (x === null || y === null || !isPlace(x, y) || (x === 0 && y === 0)) return null;
  return [x, y];
}

function metresIn(feet: string, mark: DecimalMark): number | null {
  const value = numberIn(feet, mark);
  return value === null ? null : feetToMetres(value);
}

const surfaces: Readonly<Record<string, string>> = {
  ASP: 'asphalt',
  ASPH: 'asphalt',
  CON: 'concrete',
  CONC: 'concrete',
  GRS: 'grass',
  TURF: 'grass',
  GRE: 'gravel',
  GVL: 'gravel',
  WATER: 'water',
};

const surfaceIn = (text: string): string => {
  const known = surfaces[text.toUpperCase()] ?? text.toLowerCase();
  return known === 'unk' || known === 'unknown' ? '' : known.slice(0, 40);
};

import type { Csv } from '../tables/csv';
import { decimalMarkOf, numberIn } from '../tables/decimal-mark';
import { headingOf, headingsOf, type Heading } from '../tables/headings';
import { Tally } from '../bring-in/tally';
import { isPlace } from '../osm/elements';
import { instantIn } from './track-geojson';
import type { TracksReading } from './track-xml';
import { flownAt, type Track, type TrackPoint } from './track';

interface Columns {
  readonly lat: Heading;
  readonly lng: Heading;
  readonly altitude: Heading;
  readonly time: Heading | null;
  readonly date: Heading | null;
  readonly flight: Heading | null;
}

const needed =
  'Its first row must name the columns: time, latitude, longitude, altitude (ft) or altitude (m).';

/** Whether a table's first row has what a recorded flight needs. */
export const isTrackTable = (first: readonly string[]): boolean => typeof columnsOf(first) !== 'string';

/** Recorded flights of a table with time, latitude, longitude and altitude; a column of names parts several. */
export function readTrackTable({ rows, delimiter, unclear }: Csv): TracksReading {
  const [first, ...rest] = rows;
  const columns = columnsOf(first?.cells ?? []);
  if (typeof columns === 'string')
    return { ok: false, reason: `The table has no column for: ${columns}. ${needed}` };
  const { lat, lng, altitude, time, date, flight } = columns;
  const cell = (row: (typeof rest)[number], heading: Heading | null) =>
    heading ? (row.cells[heading.index] ?? '') : '';
  const mark = decimalMarkOf(
    rest.slice(0, 2000).flatMap((row) => [lat, lng, altitude].map((h) => cell(row, h))),
    delimiter,
  );
  const tally = new Tally();
  const flights = new Map<string, TrackPoint[]>();
  for (const row of rest) {
    const [y, x] = [numberIn(cell(row, lat), mark), numberIn(cell(row, lng), mark)];
    if (unclear.has(row.row)) tally.add('rows', 'a quotation mark is not closed');
    else if (x === null || y === null || !isPlace(x, y))
      tally.add('rows', 'their latitude or longitude is no number of degrees');
    else {
      const name = cell(row, flight);
      const points = flights.get(name) ?? [];
      points.push({
        position: [x, y],
        altitude: altitudeIn(cell(row, altitude), mark),
        time: timeIn(`${cell(row, date)} ${cell(row, time)}`.trim(), mark),
      });
      flights.set(name, points);
    }
  }
  const unit = unitOf(altitude.unit);
  const tracks = [...flights].map(([name, points]): Track => ({ name, points, unit }));
  if (tracks.length === 0) return { ok: false, reason: `The table has no row with a position. ${needed}` };
  const untimed = tracks.some(({ points }) => points.every((p) => p.time === null));
  const remarks =
    time && untimed ? ['The times of this table could not be read: the flight comes in without.'] : [];
  return { ok: true, read: { tracks, waypoints: [], leftOut: tally.list, remarks } };
}

function columnsOf(first: readonly string[]): Columns | string {
  const headings = headingsOf(first);
  const find = (...names: readonly string[]) => headingOf(headings, ...names);
  const lat = find('latitude', 'lat', 'latitude deg');
  const lng = find('longitude', 'lon', 'lng', 'long', 'longitude deg');
  const altitude = find(
    'altitude',
    'alt',
    'altitude msl',
    'geometric altitude',
    'geo altitude',
    'geoaltitude',
    'gps altitude',
    'baro altitude',
    'baroaltitude',
    'barometric altitude',
    'pressure altitude',
    'elevation',
    'ele',
    'height',
  );
  if (!lat || !lng || !altitude)
    return [lat ? '' : 'latitude', lng ? '' : 'longitude', altitude ? '' : 'altitude']
      .filter((name) => name !== '')
      .join(', ');
  return {
    lat,
    lng,
    altitude,
    time: find('time', 'timestamp', 'utc', 'date time', 'datetime', 'time utc', 'utc time'),
    date: find('date', 'utc date'),
    flight: find('flight', 'callsign', 'call sign', 'registration', 'track', 'name', 'id'),
  };
}

const unitOf = (unit: string | null): 'm' | 'ft' | null =>
  /^(ft|feet|foot)$/.test(unit ?? '') ? 'ft' : /^(m|metres?|meters?|m msl)$/.test(unit ?? '') ? 'm' : null;

const altitudeIn = (text: string, mark: '.' | ','): number | null => {
  const value = numberIn(text.replace(/\s*(ft|m)$/i, ''), mark);
  return value !== null && Math.abs(value) < 200_000 ? value : null;
};

/** ISO 8601, or seconds or milliseconds since 1970. */
function timeIn(text: string, mark: '.' | ','): number | null {
  const number = numberIn(text, mark);
  if (number === null) return instantIn(text);
  if (number > 1e11 && number < 1e13) return flownAt(number);
  return number > 1e8 && number < 1e10 ? flownAt(number * 1000) : null;
}

import { isObject, type Json, type JsonObject } from '../../survey/json';
import { parseInstant } from '../../time/local-time';
import { Tally } from '../bring-in/tally';
import { isPlace } from '../osm/elements';
import { flownAt, type Track, type TrackPoint, type TracksRead, type Waypoint } from './track';

/**
 * Recorded flights and waypoints among GeoJSON features: lines with a third number or with times one a position
 * (`coordTimes`, `times`, `coordinateProperties.times`), and named points.
 */
export function tracksOfFeatures(features: readonly Json[], unit: 'm' | null): TracksRead {
  const tally = new Tally();
  const tracks: Track[] = [];
  const waypoints: Waypoint[] = [];
  for (const feature of features) {
    if (!isObject(feature)) continue;
    const properties = isObject(feature['properties']) ? feature['properties'] : {};
    if (properties['_gpxType'] === 'rte') {
      tally.add('routes', 'they are planned, not flown');
      continue;
    }
    for (const { type, coordinates, times } of geometriesOf(feature['geometry'], timesOf(properties))) {
      if (type === 'Point') {
        const waypoint = waypointOf(coordinates, properties);
        if (waypoint) waypoints.push(waypoint);
        else tally.add('waypoints', 'their coordinates are broken');
      } else if (type === 'LineString' && Array.isArray(coordinates)) {
        const points = (coordinates as readonly Json[]).map((c, i) => pointOf(c, timeAt(times, i)));
        const usable = points.filter((p) => p !== null);
        if (usable.length < points.length)
          tally.add('points', 'their coordinates are broken', points.length - usable.length);
        if (usable.length > 1) tracks.push({ name: textOf(properties['name']), points: usable, unit });
        else tally.add('flights', 'they have fewer than two points');
      } else if (type !== '') tally.add('areas and other shapes', 'they are neither flights nor waypoints');
    }
  }
  return { tracks, waypoints, leftOut: tally.list, remarks: [] };
}

interface Piece {
  readonly type: string;
  readonly coordinates: Json;
  readonly times: Json;
}

/** Collections and multi-geometries one by one, each with its times. */
function geometriesOf(geometry: Json | undefined, times: Json): readonly Piece[] {
  if (!isObject(geometry)) return [];
  const { type, coordinates = null, geometries } = geometry;
  const nested = (list: Json, i: number): Json =>
    Array.isArray(list) && Array.isArray((list as readonly Json[])[i])
      ? ((list as readonly Json[])[i] as Json)
      : list;
  if (Array.isArray(geometries))
    return (geometries as readonly Json[]).flatMap((g, i) => geometriesOf(g, nested(times, i)));
  if ((type === 'MultiLineString' || type === 'MultiPoint') && Array.isArray(coordinates))
    return (coordinates as readonly Json[]).map((part, i) => ({
      type: type.slice(5),
      coordinates: part,
      times: nested(times, i),
    }));
  return typeof type === 'string' ? [{ type, coordinates, times }] : [];
}

function timesOf(properties: JsonObject): Json {
  const inner = properties['coordinateProperties'];
  const times =
    (isObject(inner) ? inner['times'] : undefined) ?? properties['coordTimes'] ?? properties['times'];
  return times ?? null;
}

function timeAt(times: Json, i: number): number | null {
  const time = Array.isArray(times) ? (times as readonly Json[])[i] : null;
  if (typeof time === 'number') return flownAt(time);
  return typeof time === 'string' ? instantIn(time) : null;
}

/** An instant of a flight; without a zone it is UTC, as GPX and KML ask. */
export function instantIn(text: string): number | null {
  const plain = text.trim().replace(/^(\d{4}-\d{2}-\d{2}) /, '$1T');
  return flownAt(parseInstant(plain) ?? parseInstant(`${plain}Z`));
}

function pointOf(value: Json, time: number | null): TrackPoint | null {
  if (!Array.isArray(value)) return null;
  const [lng, lat, altitude] = value as readonly Json[];
  if (typeof lng !== 'number' || typeof lat !== 'number' || !isPlace(lng, lat)) return null;
  return {
    position: [lng, lat],
    altitude: typeof altitude === 'number' && Number.isFinite(altitude) ? altitude : null,
    time,
  };
}

function waypointOf(coordinates: Json, properties: JsonObject): Waypoint | null {
  const point = pointOf(coordinates, null);
  if (!point) return null;
  const notes = [properties['desc'], properties['cmt'], properties['description']]
    .map(plainText)
    .filter((text, i, all) => text !== '' && all.indexOf(text) === i);
  return {
    name: textOf(properties['name']),
    notes: notes.join('\n').slice(0, 2000),
    position: point.position,
  };
}

const textOf = (value: Json | undefined): string =>
  typeof value === 'string' ? value.replace(/\s+/g, ' ').trim().slice(0, 120) : '';

/** Descriptions are often HTML, as text or marked as such; only their words are taken. */
function plainText(value: Json | undefined): string {
  const text = isObject(value) ? value['value'] : value;
  if (typeof text !== 'string') return '';
  return text
    .replace(/<(?:br|\/p|\/div|\/tr|\/li)\b[^>]*>/gi, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/[ \t]+/g, ' ')
    .replace(/\s*\n\s*/g, '\n')
    .trim();
}

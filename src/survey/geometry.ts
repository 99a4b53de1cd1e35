import { wrap180 } from './angles';
import type { Position } from './document';
import { isObject, shown } from './json';

export type Shape = 'Point' | 'LineString' | 'Polygon';

/** Why a feature's geometry has no meaning, with the path to the place: thrown and caught within this room. */
class Broken extends Error {}

/** `index`: its place in the list at `path`, null where it stands alone. Only a broken one is named: there may be millions. */
function position(value: unknown, path: string, index: number | null = null): Position {
  const at = () => (index === null ? path : `${path}.${index}`);
  if (!Array.isArray(value) || value.length < 2)
    throw new Broken(`${at()}: expected [longitude, latitude], got ${shown(value)}`);
  const lng: unknown = value[0];
  const lat: unknown = value[1];
  if (typeof lng !== 'number' || !(Math.abs(lng) <= 180))
    throw new Broken(`${at()}: longitude ${shown(lng)} is not within ±180 degrees`);
  if (typeof lat !== 'number' || !(Math.abs(lat) <= 90))
    throw new Broken(`${at()}: latitude ${shown(lat)} is not within ±90 degrees`);
  return [lng, lat];
}

function positions(value: unknown, path: string, least: number): Position[] {
  if (!Array.isArray(value)) throw new Broken(`${path}: expected a list of positions, got ${shown(value)}`);
  const list = (value as unknown[]).map((p, i) => position(p, path, i));
  if (list.length < least)
    throw new Broken(`${path}: expected at least ${least} positions, got ${list.length}`);
  return list;
}

type Coordinates = { Point: Position; LineString: Position[]; Polygon: Position[][] };
export type ShapeReading<S extends Shape> =
  { ok: true; shape: S; coordinates: Coordinates[S] } | { ok: false; reason: string };

/** Reads a geometry that must be one of `shapes`; out-of-range or broken coordinates are a reason, not a guess. */
export function readShape<S extends Shape>(geometry: unknown, shapes: readonly S[]): ShapeReading<S> {
  if (!isObject(geometry)) return { ok: false, reason: 'geometry: missing' };
  const shape = shapes.find((s) => s === geometry['type']);
  if (!shape)
    return { ok: false, reason: `geometry: expected ${shapes.join(' or ')}, got ${shown(geometry['type'])}` };
  const value = geometry['coordinates'];
  const path = 'geometry.coordinates';
  try {
    const read: { [K in Shape]: () => Coordinates[K] } = {
      Point: () => position(value, path),
      LineString: () => positions(value, path, 2),
      Polygon: () => {
        if (!Array.isArray(value) || value.length === 0)
          throw new Broken(`${path}: expected a list of rings, got ${shown(value)}`);
        return (value as unknown[]).map((ring, i) =>
          closed(positions(ring, `${path}.${i}`, 3), `${path}.${i}`),
        );
      },
    };
    return { ok: true, shape, coordinates: read[shape]() };
  } catch (error) {
    if (error instanceof Broken) return { ok: false, reason: error.message };
    throw error;
  }
}

function closed(ring: Position[], path: string): Position[] {
  const first = ring[0] as Position;
  const last = ring[ring.length - 1] as Position;
  const out = first[0] === last[0] && first[1] === last[1] ? ring : [...ring, first];
  if (out.length < 4) throw new Broken(`${path}: expected a ring of at least three corners`);
  return out;
}

/** Rounds to 7 decimals (about 1 cm), as every edit does, and brings the longitude within +-180. */
export function tidyPosition([lng, lat]: Position): Position {
  const wrapped = lng > 180 || lng < -180 ? wrap180(lng) : lng;
  return [round7(wrapped), round7(Math.max(-90, Math.min(90, lat)))];
}

const round7 = (x: number) => Math.round(x * 1e7) / 1e7 + 0;

/** Twice the signed area in square degrees, longitudes unwrapped along the ring; positive is counter-clockwise. */
export function signedArea(ring: readonly Position[]): number {
  let sum = 0;
  for (let i = 1; i < ring.length; i++) {
    const [x0, y0] = ring[i - 1] as Position;
    const [x1, y1] = ring[i] as Position;
    const dx = wrap180(x1 - x0);
    sum -= dx * (y0 + y1);
  }
  return sum;
}

/** Exterior rings counter-clockwise, holes clockwise (RFC 7946, 3.1.6). */
export function windRings(rings: readonly (readonly Position[])[]): readonly (readonly Position[])[] {
  return rings.map((ring, i) => {
    const area = signedArea(ring);
    return area !== 0 && area > 0 !== (i === 0) ? [...ring].reverse() : ring;
  });
}

import type { Position } from './document';
import { readShape, windRings } from './geometry';
import type { JsonObject } from './json';

/**
 * A geometry of ours in the form in which we save it: two numbers a position, rings closed and wound as
 * RFC 7946 3.1.6 asks. Anything broken is returned untouched for the reader to report.
 */
export function normalGeometry(geometry: JsonObject): {
  readonly geometry: JsonObject;
  readonly changes: readonly string[];
} {
  const shape = readShape(geometry, ['Point', 'LineString', 'Polygon']);
  if (!shape.ok) return { geometry, changes: [] };
  const changes: string[] = [];
  const coordinates =
    shape.shape === 'Polygon'
      ? windRings(shape.coordinates as readonly (readonly Position[])[])
      : shape.coordinates;
  if (hasThirdNumber(geometry['coordinates']))
    changes.push(
      'geometry.coordinates: a third number (height above the ellipsoid) is dropped; heights here are above mean sea level and stand in the properties',
    );
  if (isSame(coordinates, geometry['coordinates'])) return { geometry, changes };
  const { bbox: _stale, ...rest } = geometry;
  return { geometry: { ...rest, coordinates }, changes };
}

/** Lists of lists of numbers, three deep at most: the shape has been read. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number') return Object.is(a, b);
  if (!Array.isArray(a) || !Array.isArray(b)) return Object.is(a, b);
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!isSame(a[i], b[i])) return false;
  return true;
}

function hasThirdNumber(coordinates: unknown): boolean {
  if (!Array.isArray(coordinates)) return false;
  if (typeof coordinates[0] === 'number') return coordinates.length > 2;
  return coordinates.some(hasThirdNumber);
}

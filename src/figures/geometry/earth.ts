import type { Position } from '../../survey/document';
import { DEG, RAD, wrap360 } from './angles';

/** WGS84 (NIMA TR8350.2): semi-major axis in m and first eccentricity squared. */
const A = 6378137;
const F = 1 / 298.257223563;
const E2 = F * (2 - F);

export type Vec3 = readonly [x: number, y: number, z: number];

export const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const scaled = (v: Vec3, k: number): Vec3 => [v[0] * k, v[1] * k, v[2] * k];
export const lengthOf = ([x, y, z]: Vec3): number => Math.hypot(x, y, z);
export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const along = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + b[0] * t,
  a[1] + b[1] * t,
  a[2] + b[2] * t,
];

/** Earth-centred, earth-fixed metres of a position at `height` m (here: above mean sea level, taken as above the ellipsoid; only differences are used). */
export function earthCentred([lng, lat]: Position, height: number): Vec3 {
  const sinLat = Math.sin(lat * RAD);
  const cosLat = Math.cos(lat * RAD);
  const n = A / Math.sqrt(1 - E2 * sinLat * sinLat);
  const r = (n + height) * cosLat;
  return [r * Math.cos(lng * RAD), r * Math.sin(lng * RAD), (n * (1 - E2) + height) * sinLat];
}

/** East, north and up at a position on the ellipsoid: the site frame when taken at the survey's reference. */
export interface Frame {
  readonly position: Position;
  readonly origin: Vec3;
  readonly east: Vec3;
  readonly north: Vec3;
  readonly up: Vec3;
  /** Radii of curvature of the ellipsoid in m, along the meridian and across it. */
  readonly meridianRadius: number;
  readonly normalRadius: number;
}

export function frameAt(position: Position): Frame {
  const [lng, lat] = position;
  const sinLat = Math.sin(lat * RAD);
  const cosLat = Math.cos(lat * RAD);
  const sinLng = Math.sin(lng * RAD);
  const cosLng = Math.cos(lng * RAD);
  const w = 1 - E2 * sinLat * sinLat;
  return {
    position,
    origin: earthCentred(position, 0),
    east: [-sinLng, cosLng, 0],
    north: [-sinLat * cosLng, -sinLat * sinLng, cosLat],
    up: [cosLat * cosLng, cosLat * sinLng, sinLat],
    meridianRadius: (A * (1 - E2)) / (w * Math.sqrt(w)),
    normalRadius: A / Math.sqrt(w),
  };
}

/** Radius of curvature in m of the ellipsoid at `frame` in the direction (east, north), a unit vector (Euler). */
export function radiusAlong(frame: Frame, east: number, north: number): number {
  return 1 / ((north * north) / frame.meridianRadius + (east * east) / frame.normalRadius);
}

/**
 * The point whose foot lies `x` m east and `y` m north of the frame's origin along the curved earth, `height` m
 * above mean sea level; earth-centred. Exact to 1 cm within 15 km.
 */
export function placed(frame: Frame, x: number, y: number, height: number): Vec3 {
  const s = Math.hypot(x, y);
  if (s === 0) return along(frame.origin, frame.up, height);
  const [e, n] = [x / s, y / s];
  const radius = radiusAlong(frame, e, n);
  const arc = s / radius;
  const out = (radius + height) * Math.sin(arc);
  // Written so that nothing is lost: (radius + height) cos(arc) - radius.
  const up = height * Math.cos(arc) - 2 * radius * Math.sin(arc / 2) ** 2;
  return along(along(along(frame.origin, frame.east, out * e), frame.north, out * n), frame.up, up);
}

/** East, north and up in m of an earth-centred point as seen from the frame. */
export function inFrame(frame: Frame, point: Vec3): Vec3 {
  const d = minus(point, frame.origin);
  return [dot(d, frame.east), dot(d, frame.north), dot(d, frame.up)];
}

/** East and north in m along the curved earth of a position as seen from the frame: the inverse of `placed`. */
export function mapped(frame: Frame, position: Position): readonly [x: number, y: number] {
  const [e, n] = inFrame(frame, earthCentred(position, 0));
  const out = Math.hypot(e, n);
  if (out === 0) return [0, 0];
  const radius = radiusAlong(frame, e / out, n / out);
  const scale = (Math.asin(Math.min(1, out / radius)) * radius) / out;
  return [e * scale, n * scale];
}

/** Longitude and latitude of an earth-centred point near the ellipsoid (Bowring 1976, better than 1e-9 degrees here). */
export function positionOf([x, y, z]: Vec3): Position {
  const p = Math.hypot(x, y);
  const b = A * (1 - F);
  const theta = Math.atan2(z * A, p * b);
  const ep2 = E2 / (1 - E2);
  const lat = Math.atan2(z + ep2 * b * Math.sin(theta) ** 3, p - E2 * A * Math.cos(theta) ** 3);
  return [Math.atan2(y, x) * DEG, lat * DEG];
}

/** The position `distance` m from `from` towards `bearing`, degrees from true north. */
export function destination(from: Position, bearing: number, distance: number): Position {
  return positionOf(
    placed(frameAt(from), distance * Math.sin(bearing * RAD), distance * Math.cos(bearing * RAD), 0),
  );
}

/**
 * Ground distance in m and azimuth in degrees from true north at `from`; azimuth null for one and the same point.
 * Agrees with the WGS84 geodesic to 1 cm and 0.0001 degrees within 15 km (chord and normal section).
 */
export function groundLine(
  from: Position,
  to: Position,
): { readonly distance: number; readonly azimuth: number | null } {
  const frame = frameAt(from);
  const d = minus(earthCentred(to, 0), frame.origin);
  const chord = Math.hypot(d[0], d[1], d[2]);
  if (chord < 1e-6) return { distance: 0, azimuth: null };
  const [e, n] = [dot(d, frame.east), dot(d, frame.north)];
  const out = Math.hypot(e, n);
  const radius = out > 0 ? radiusAlong(frame, e / out, n / out) : frame.normalRadius;
  return {
    distance: 2 * radius * Math.asin(Math.min(1, chord / (2 * radius))),
    azimuth: wrap360(Math.atan2(e, n) * DEG),
  };
}

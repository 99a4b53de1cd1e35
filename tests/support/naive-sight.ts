import Geodesic from 'geographiclib-geodesic';

/**
 * Sight lines of the design, section 3, once more and by other means: geodesics from the eye, the earth as a sphere of
 * the radius that refraction makes of it, the ray as a straight line over that sphere, and steps along it. Slow and
 * plain. Shares no line with src.
 */

const rad = Math.PI / 180;
const wgs84 = Geodesic.Geodesic.WGS84;

interface LatLng {
  readonly lat: number;
  readonly lng: number;
}
export interface NaiveObstacle {
  readonly id: string;
  /** Corners of a polygon, the first not repeated. */
  readonly corners: readonly LatLng[];
  readonly base: number;
  readonly height: number;
  readonly hides: boolean;
}
/** m above mean sea level of the ground. */
export type NaiveGround = (place: LatLng) => number;

export interface NaiveLine {
  readonly hidden: boolean;
  /** Rounding or the grid of the terrain decides. */
  readonly doubtful: boolean;
}
export type NaiveTarget = { readonly azimuth: number } & (
  { readonly distance: number; readonly height: number } | { readonly altitude: number }
);

type Flat = readonly [x: number, y: number];

/** Sight lines from one eye. `ground` is that under the spot; a model of the terrain is looked at every `step` m. */
export class NaiveEye {
  readonly #place: LatLng;
  readonly #eye: number;
  readonly #radius: number;
  readonly #obstacles: readonly { readonly corners: readonly Flat[]; readonly top: number }[];
  readonly #terrain: { readonly ground: NaiveGround; readonly step: number } | null;

  constructor(
    place: LatLng,
    eye: number,
    obstacles: readonly NaiveObstacle[],
    terrain: { readonly ground: NaiveGround; readonly step: number } | null,
  ) {
    this.#place = place;
    this.#eye = eye;
    // Gauss's mean radius, stretched by what refraction takes off the curvature.
    const [a, e2] = [6378137, 0.00669437999];
    const w = 1 - e2 * Math.sin(place.lat * rad) ** 2;
    this.#radius = (a * Math.sqrt(1 - e2)) / w / (1 - 0.13);
    this.#terrain = terrain;
    this.#obstacles = obstacles
      .filter((o) => o.hides)
      .map(({ corners, base, height }) => ({
        corners: corners.map((corner): Flat => {
          const { s12 = NaN, azi1 = NaN } = wgs84.Inverse(place.lat, place.lng, corner.lat, corner.lng);
          return [s12 * Math.sin(azi1 * rad), s12 * Math.cos(azi1 * rad)];
        }),
        top: base + height,
      }));
  }

  /** m above mean sea level of the ray `s` m out. */
  #ray(target: NaiveTarget, s: number): number {
    const radius = this.#radius;
    const from = radius + this.#eye;
    const out = s / radius;
    if ('altitude' in target)
      return (from * Math.cos(target.altitude * rad)) / Math.cos(target.altitude * rad + out) - radius;
    const whole = target.distance / radius;
    const to = radius + target.height;
    return Math.sin(whole) / (Math.sin(whole - out) / from + Math.sin(out) / to) - radius;
  }

  #behindObstacle(target: NaiveTarget, turned: number, lower: number): boolean {
    const far = 'altitude' in target ? 15_000 : target.distance;
    const [sin, cos] = [Math.sin((target.azimuth + turned) * rad), Math.cos((target.azimuth + turned) * rad)];
    return this.#obstacles.some(({ corners, top }) => {
      // Turned so that the ray runs along the axis: it is over the (convex) block between the crossings of its sides.
      const [ahead, aside] = [
        corners.map(([x, y]) => x * sin + y * cos),
        corners.map(([x, y]) => x * cos - y * sin),
      ];
      const crossings = corners.flatMap((_, i) => {
        const j = (i + 1) % corners.length;
        const [a = NaN, b = NaN, p = NaN, q = NaN] = [aside[i], aside[j], ahead[i], ahead[j]];
        return a > 0 === b > 0 ? [] : [p + ((q - p) * a) / (a - b)];
      });
      const [from, to] = [Math.max(0, Math.min(...crossings)), Math.min(far, Math.max(...crossings))];
      for (let i = 0; i <= 10 && from < to; i++)
        if (this.#ray(target, from + ((to - from) * i) / 10) - lower < top) return true;
      return false;
    });
  }

  #behindTerrain(target: NaiveTarget, lower: number): boolean {
    if (!this.#terrain) return false;
    const { ground, step } = this.#terrain;
    const line = wgs84.DirectLine(this.#place.lat, this.#place.lng, target.azimuth, 1);
    const to = 'altitude' in target ? 6000 : target.distance - step;
    for (let s = step; s <= to; s += step / 2) {
      const { lat2 = NaN, lon2 = NaN } = line.Position(s);
      if (ground({ lat: lat2, lng: lon2 }) > this.#ray(target, s) - lower) return true;
    }
    return false;
  }

  look(target: NaiveTarget): NaiveLine {
    // A hundredth of a degree to either side, 20 cm up and down at an obstacle, 1 m at the grid of a terrain.
    const answers = [
      this.#behindObstacle(target, 0, 0),
      ...[-0.02, 0.02].map((turned) => this.#behindObstacle(target, turned, 0)),
      ...[-0.2, 0.2].map((lower) => this.#behindObstacle(target, 0, lower)),
    ];
    const grounds = [0, -1, 1].map((lower) => this.#behindTerrain(target, lower));
    const hidden = answers[0] === true || grounds[0] === true;
    const certainly = answers.every(Boolean) || grounds.every(Boolean);
    const never = !answers.some(Boolean) && !grounds.some(Boolean);
    return { hidden, doubtful: !certainly && !never };
  }
}

/** Longitude, latitude and height of an earth-centred point (iterated). */
export function geodetic([x, y, z]: readonly [number, number, number]): LatLng & { readonly height: number } {
  const [a, e2] = [6378137, 0.0066943799901413165];
  const out = Math.hypot(x, y);
  let lat = Math.atan2(z, out * (1 - e2));
  let height = 0;
  for (let i = 0; i < 8; i++) {
    const n = a / Math.sqrt(1 - e2 * Math.sin(lat) ** 2);
    height = Math.cos(lat) > 0.5 ? out / Math.cos(lat) - n : z / Math.sin(lat) - n * (1 - e2);
    lat = Math.atan2(z, out * (1 - (e2 * n) / (n + height)));
  }
  return { lat: lat / rad, lng: Math.atan2(y, x) / rad, height };
}

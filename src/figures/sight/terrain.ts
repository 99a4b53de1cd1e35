import { DEG, RAD, wrap180 } from '../geometry/angles';
import { mapped, type Frame } from '../geometry/earth';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import { Ceilings } from './ceilings';

/** Sampled heights of the ground on longitude and latitude, rows from north to south, as elevation files hold them. */
export interface ElevationGrid {
  readonly columns: number;
  readonly rows: number;
  /** Degrees of the first sample, that in the north-west. */
  readonly west: number;
  readonly north: number;
  /** Degrees from sample to sample, both positive. */
  readonly stepLng: number;
  readonly stepLat: number;
  /** m above mean sea level, NaN where unknown. */
  readonly heights: Float32Array;
}

/** East and north in m that a ray begins at, and its level unit vector: in an array, so that handing it on makes no garbage. */
export type Ray = Float64Array;

/** The ground, as sight lines see it. East and north in m in the site frame; NaN where it is not known. */
export interface Ground {
  heightAt(east: number, north: number): number;
  /** The same at many places on one ray, many numbers a call: `heights[k]` at `distances[k]` m, for `from` <= k < `to`. */
  heightsAlong(ray: Ray, distances: Float64Array, from: number, to: number, heights: Float64Array): void;
  /** m above mean sea level that nothing of the ground between two places is above, along the line from one to the other. */
  ceilingAlong(east0: number, north0: number, east1: number, north1: number): number;
  /** m between samples along a sight line that lose nothing of the ground. */
  readonly step: number;
  /** m above mean sea level that nothing of the ground is above. */
  readonly highest: number;
}

/** An elevation grid in a site frame. */
export interface Terrain extends Ground {
  readonly frame: Frame;
}

/** `heightsAlong` of a ground that knows the height of any place. */
export const heightsBy =
  (heightAt: Ground['heightAt']): Ground['heightsAlong'] =>
  (ray, distances, from, to, heights) => {
    const east = ray[0] as number;
    const north = ray[1] as number;
    const sin = ray[2] as number;
    const cos = ray[3] as number;
    for (let k = from; k < to; k++) {
      const s = distances[k] as number;
      heights[k] = heightAt(east + sin * s, north + cos * s);
    }
  };

const kept = new Memo<Terrain>();

/** The grid about a site. Heights between samples are bilinear. The same object as long as both stay. */
export const terrainIn = (grid: ElevationGrid, frame: Frame): Terrain =>
  kept.get([grid, frame], () => gridIn(grid, frame));

function gridIn(grid: ElevationGrid, frame: Frame): Terrain {
  const { columns, rows, heights, stepLng, stepLat } = grid;
  const [lng, lat] = frame.position;
  const { meridianRadius, normalRadius } = frame;
  // Longitude and latitude of (east, north): the geodesic's series to the second order (Legendre). What is left out
  // comes to less than half a metre 12 km away, up to 75 degrees of latitude.
  const tan = Math.tan(lat * RAD);
  const perNorth = DEG / meridianRadius / stepLat;
  const perEast = DEG / (normalRadius * Math.cos(lat * RAD)) / stepLng;
  const bend = -tan / (2 * normalRadius);
  const spread = tan / normalRadius;
  const middleColumn = wrap180(lng - grid.west) / stepLng;
  const middleRow = (grid.north - lat) / stepLat;

  const columnAt = (east: number, north: number) => middleColumn + east * perEast * (1 + spread * north);
  const rowAt = (east: number, north: number) => middleRow - (north + bend * east * east) * perNorth;
  const lastColumn = Math.max(0, columns - 2);
  const lastRow = Math.max(0, rows - 2);
  const right = columns > 1 ? 1 : 0;
  const down = rows > 1 ? columns : 0;
  // So small that the loops over it take it in: else every height is garbage.
  const between = (x: number, y: number): number => {
    const column = x <= 0 ? 0 : x >= lastColumn ? lastColumn : Math.floor(x);
    const row = y <= 0 ? 0 : y >= lastRow ? lastRow : Math.floor(y);
    const u = Math.max(0, Math.min(1, x - column));
    const v = Math.max(0, Math.min(1, y - row));
    const at = row * columns + column;
    const a = heights[at] as number;
    const b = heights[at + right] as number;
    const c = heights[at + down] as number;
    const d = heights[at + down + right] as number;
    const height = (a + (b - a) * u) * (1 - v) + (c + (d - c) * u) * v;
    return height === height ? height : ofTheKnown(a, b, c, d, u, v);
  };
  // Read from an array of doubles: a plain NaN beside a number makes the engine put both into an object.
  const unknown = Float64Array.of(NaN);
  // Half a step round the outermost samples still belongs to the grid.
  const heightAt = (east: number, north: number): number => {
    const x = columnAt(east, north);
    const y = rowAt(east, north);
    const inside = x >= -0.5 && y >= -0.5 && x <= columns - 0.5 && y <= rows - 0.5;
    return inside ? between(x, y) : (unknown[0] as number);
  };
  let ceilings: Ceilings | null = null;
  let highest = -Infinity;
  for (const height of heights) if (height > highest) highest = height;
  return {
    frame,
    heightAt,
    heightsAlong: heightsBy(heightAt),
    // Made when first asked for. A line is as good as straight on the grid: it bends by less than the sample by which they are widened.
    ceilingAlong: (east0, north0, east1, north1) =>
      (ceilings ??= new Ceilings(columns, rows, heights)).between(
        columnAt(east0, north0),
        rowAt(east0, north0),
        columnAt(east1, north1),
        rowAt(east1, north1),
      ),
    highest,
    // Half a cell: no crest between two samples is stepped over.
    step: Math.max(1, Math.min((meridianRadius * stepLat) / DEG, 1 / perEast) / 2),
  };
}

/** Between samples of which some are unknown: the mean of the known ones, weighted as bilinear heights are. */
function ofTheKnown(a: number, b: number, c: number, d: number, u: number, v: number): number {
  let [sum, weights] = [0, 0];
  const corners = [
    [a, (1 - u) * (1 - v)],
    [b, u * (1 - v)],
    [c, (1 - u) * v],
    [d, u * v],
  ] as const;
  for (const [height, weight] of corners) {
    if (Number.isNaN(height)) continue;
    sum += height * weight;
    weights += weight;
  }
  return weights > 0 ? sum / weights : NaN;
}

/** m above mean sea level of the ground at a position; null where the terrain does not say. */
export function terrainAt(terrain: Terrain, position: Position): number | null {
  const height = terrain.heightAt(...mapped(terrain.frame, position));
  return Number.isNaN(height) ? null : height;
}

import { DEG, wrap180 } from '../figures/geometry/angles';
import type { ElevationGrid } from '../figures/sight/terrain';

/** Pixels to a side of a tile of heights. */
export const reliefSize = 256;

/** South-west and north-east of a grid in degrees, for the map to ask for nothing else. */
export const reliefBounds = (grid: ElevationGrid): [number, number, number, number] => [
  grid.west,
  grid.north - (grid.rows - 1) * grid.stepLat,
  grid.west + (grid.columns - 1) * grid.stepLng,
  grid.north,
];

/**
 * A map tile of the grid's heights in the Terrarium encoding, four bytes a pixel. Beyond the grid its edge goes on, and
 * unknown ground is level with the lowest: neither makes a cliff.
 */
export function reliefTile(
  grid: ElevationGrid,
  z: number,
  x: number,
  y: number,
): Uint8ClampedArray<ArrayBuffer> {
  const { columns, rows, heights, west, north, stepLng, stepLat } = grid;
  const pixels = new Uint8ClampedArray(4 * reliefSize * reliefSize);
  let lowest = Infinity;
  for (const height of heights) if (height < lowest) lowest = height;
  if (lowest === Infinity) lowest = 0;
  const n = 2 ** z;
  const clamp = (value: number, most: number) => Math.max(0, Math.min(most, value));
  for (let row = 0; row < reliefSize; row++) {
    const lat = Math.atan(Math.sinh(Math.PI * (1 - (2 * (y + (row + 0.5) / reliefSize)) / n))) * DEG;
    const v = clamp((north - lat) / stepLat, rows - 1);
    const top = Math.min(rows - 2, Math.floor(v));
    for (let column = 0; column < reliefSize; column++) {
      const lng = ((x + (column + 0.5) / reliefSize) / n) * 360 - 180;
      const u = clamp(wrap180(lng - west) / stepLng, columns - 1);
      const left = Math.min(columns - 2, Math.floor(u));
      const at = top * columns + left;
      const [s, t] = [u - left, v - top];
      const upper = (heights[at] as number) * (1 - s) + (heights[at + 1] as number) * s;
      const lower = (heights[at + columns] as number) * (1 - s) + (heights[at + columns + 1] as number) * s;
      const height = upper * (1 - t) + lower * t;
      const value = (Number.isNaN(height) ? lowest : height) + 32_768;
      const k = 4 * (row * reliefSize + column);
      pixels[k] = Math.floor(value / 256);
      pixels[k + 1] = Math.floor(value) % 256;
      pixels[k + 2] = Math.floor((value % 1) * 256);
      pixels[k + 3] = 255;
    }
  }
  return pixels;
}

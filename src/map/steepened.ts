import type { ElevationGrid } from '../figures/sight/terrain';
import { RAD } from '../survey/angles';

/** Rise over run that the steeper tenth of the ground is to have: less cannot be made out when it is shaded. */
const shown = 0.25;
const mostTimes = 8;
/** Share of a grid's width over which it comes level towards its edge, so that shading ends without a seam. */
const rim = 0.15;
/** Metres to a degree of latitude, near enough for shading. */
const metresPerDegree = 111_320;

/** A grid for shading only: gentle country made steeper about its mean height, mountains left as they are. */
export function steepened(grid: ElevationGrid): ElevationGrid {
  const { columns, rows, heights } = grid;
  let [sum, known] = [0, 0];
  for (const height of heights)
    if (!Number.isNaN(height)) {
      sum += height;
      known++;
    }
  const mean = known > 0 ? sum / known : 0;
  const times = Math.max(1, Math.min(mostTimes, shown / steepness(grid)));
  const width = rim * Math.min(columns, rows);
  const out = new Float32Array(heights.length);
  for (let row = 0, i = 0; row < rows; row++)
    for (let column = 0; column < columns; column++, i++) {
      const inside = Math.min(row, rows - 1 - row, column, columns - 1 - column) / width;
      const part = inside >= 1 ? 1 : inside * inside * (3 - 2 * inside);
      out[i] = mean + ((heights[i] as number) - mean) * times * part;
    }
  return { ...grid, heights: out };
}

/** Rise over run that a tenth of the ground is steeper than. */
function steepness({ columns, rows, heights, north, stepLng, stepLat }: ElevationGrid): number {
  const across = stepLng * metresPerDegree * Math.cos((north - (rows / 2) * stepLat) * RAD);
  const down = stepLat * metresPerDegree;
  const stride = Math.max(1, Math.floor(Math.sqrt((columns * rows) / 20_000)));
  const slopes: number[] = [];
  for (let row = 0; row + 1 < rows; row += stride)
    for (let column = 0; column + 1 < columns; column += stride) {
      const i = row * columns + column;
      const here = heights[i] as number;
      const slope = Math.hypot(
        ((heights[i + 1] as number) - here) / across,
        ((heights[i + columns] as number) - here) / down,
      );
      if (!Number.isNaN(slope)) slopes.push(slope);
    }
  slopes.sort((a, b) => a - b);
  return slopes[Math.floor(slopes.length * 0.9)] ?? 0;
}

import { middleOf, printedPosition, type Area } from '../sweep/area';
import type { SweepProgress } from '../sweep/run';
import { groundCodes } from '../sweep/sweep';
import type { DrawnCells, PlaceLayer } from './drawn-places.svelte';

const closedCode = groundCodes.indexOf('closed');

/** North-west, north-east, south-east and south-west corner of an area. */
function cornersOf(area: Area): DrawnCells['corners'] {
  const { frame, west, south, side } = area;
  const at = (x: number, y: number) => printedPosition(frame, west + x * side, south + y * side);
  return [at(0, 1), at(1, 1), at(1, 0), at(0, 0)];
}

/** The cells of a sweep in the units of a layer. `shares`: in sight, of an area of its own; null while not known. */
export function cellsToDraw(
  layer: PlaceLayer,
  { plan, figures, stride }: SweepProgress,
  usableTo: number,
  shares: { readonly area: Area; readonly values: Float64Array } | null,
): DrawnCells {
  const { area, step } = plan;
  const all = figures.cells.length;
  const values = new Float64Array(all).fill(NaN);
  const closed = new Uint8Array(all);
  for (let i = 0; i < all; i++) {
    if (stride[i] === 0) continue;
    closed[i] = figures.ground[i] === closedCode ? 1 : 0;
    switch (layer) {
      case 'minutes':
        if ((figures.good[i] as number) > 0) values[i] = ((figures.good[i] as number) * step) / 60;
        break;
      case 'focal':
        if ((figures.worth[i] as number) > 0) values[i] = figures.focal[i] as number;
        break;
      case 'light-a':
      case 'light-b':
        if ((figures.worth[i] as number) > 0) values[i] = figures.light[i] as number;
        break;
      case 'in-sight':
        if (shares) values[i] = shareAt(shares, area, i);
    }
  }
  return { layer, count: area.count, values, closed, stride, usableTo, corners: cornersOf(area) };
}

function shareAt(
  { area, values }: { readonly area: Area; readonly values: Float64Array },
  of: Area,
  i: number,
): number {
  const [x, y] = middleOf(of, i);
  const column = Math.floor((x - area.west) / area.cell);
  const row = Math.floor((y - area.south) / area.cell);
  if (column < 0 || row < 0 || column >= area.count || row >= area.count) return NaN;
  return values[row * area.count + column] as number;
}

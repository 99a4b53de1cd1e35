import type { Position } from '../survey/document';
import type { Runway } from '../survey/schema/runway';
import { mapped, placed, positionOf, type Frame } from '../figures/geometry/earth';
import { leastSide, mostSide, roomRound } from './practice';

/** Squares round an airfield, rows from the south, cells from the west. East and north in m of the site frame. */
export interface Area {
  readonly frame: Frame;
  /** m of the south-western corner. */
  readonly west: number;
  readonly south: number;
  /** m to a side of the whole, and of a cell; cells to a side. */
  readonly side: number;
  readonly cell: number;
  readonly count: number;
}

/** About the middle of the runways' bounding box: 4 km, or 3 km more than the box is long, at most 12 km. */
export function areaAbout(runways: readonly Runway[], frame: Frame, cell: number, side: number | null): Area {
  const ends = runways.flatMap((r) => r.line.map((position) => mapped(frame, position)));
  // A display over open country has no runway: the survey's reference stands in.
  const places = ends.length > 0 ? ends : [[0, 0] as const];
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const wanted =
    side ?? Math.min(mostSide, Math.max(leastSide, Math.max(east - west, north - south) + roomRound));
  // A whole number of cells: what is asked for, or the least that covers it and is not too much.
  const whole = Math.ceil(wanted / cell - 1e-9);
  const count = Math.max(1, whole * cell > mostSide ? Math.floor(mostSide / cell + 1e-9) : whole);
  const all = count * cell;
  return {
    frame,
    west: (west + east) / 2 - all / 2,
    south: (south + north) / 2 - all / 2,
    side: all,
    cell,
    count,
  };
}

const decimals = 1e7;
const round7 = (degrees: number) => Math.round(degrees * decimals) / decimals;

/** A place of the site frame as it is printed, and as it is computed: to 7 decimals of a degree. */
export function printedPosition(frame: Frame, x: number, y: number): Position {
  const [lng, lat] = positionOf(placed(frame, x, y, 0));
  return [round7(lng), round7(lat)];
}

/** The middle of a cell, counted row by row. */
export const middleOf = (
  { west, south, cell, count }: Area,
  index: number,
): readonly [x: number, y: number] => [
  west + ((index % count) + 0.5) * cell,
  south + (Math.floor(index / count) + 0.5) * cell,
];

export const cellPosition = (area: Area, index: number): Position =>
  printedPosition(area.frame, ...middleOf(area, index));

/** The middle of an area, as a position. */
export const centreOf = (area: Area): Position =>
  cellPosition(area, Math.floor(area.count / 2) * (area.count + 1));

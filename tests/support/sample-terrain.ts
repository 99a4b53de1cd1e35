import { frameAt, mapped } from '../../src/figures/geometry/earth';
import type { Position } from '../../src/survey/document';

/**
 * The made-up ground of Tolverby, the sample site: level along its runways, a rise with the Beacon Path seat in the
 * north-west, the river's meadows in the south, hills in the north. `sample-sites/tolverby-terrain.tif` has its heights to
 * the decimetre; test F180 holds the two together.
 */

const runways = [
  { a: [18.1567296, 50.9254977], b: [18.1900727, 50.9318999], elevations: [181.2, 186.4] },
  { a: [18.1709575, 50.9376074], b: [18.1840107, 50.9258256], elevations: [183, 185.7] },
] as const;
const seat: Position = [18.1612427, 50.9323403];
const seatGround = 197.5;

const middle: Position = [18.1734, 50.9287];
const frame = frameAt(middle);
export const sampleGrid = {
  columns: 134,
  rows: 134,
  west: middle[0] - 66.5 * 0.00128,
  north: middle[1] + 66.5 * 0.00081,
  stepLng: 0.00128,
  stepLat: 0.00081,
} as const;

const smooth = (x: number) => {
  const t = Math.max(0, Math.min(1, x));
  return t * t * (3 - 2 * t);
};

/** m above mean sea level at a place, in m east and north of the site's middle. */
function heightAt(x: number, y: number): number {
  let [sum, weights, nearest] = [0, 0, Infinity];
  let south = 0;
  for (const [i, { a, b, elevations }] of runways.entries()) {
    const [ax, ay] = mapped(frame, [a[0], a[1]]);
    const [bx, by] = mapped(frame, [b[0], b[1]]);
    const length = Math.hypot(bx - ax, by - ay);
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    const t = Math.max(0, Math.min(length, (x - ax) * ux + (y - ay) * uy));
    const off = Math.hypot(x - ax - t * ux, y - ay - t * uy);
    const weight = 1 / (off * off + 40 ** 2);
    sum += weight * (elevations[0] + ((elevations[1] - elevations[0]) * t) / length);
    weights += weight;
    nearest = Math.min(nearest, off);
    if (i === 0) south = (x - ax) * uy - (y - ay) * ux;
  }
  // Strips lie a little higher than the grass beside them.
  const level = sum / weights - 0.3;
  const [sx, sy] = mapped(frame, seat);
  const rise = (seatGround - 183) * Math.exp(-((x - sx) ** 2 + (y - sy) ** 2) / (2 * 200 ** 2));
  const meadows = -16 * smooth((south - 700) / 1500);
  const hills =
    smooth((nearest - 1500) / 3000) *
    smooth((-south - 800) / 2500) *
    (34 + 14 * Math.sin(x / 700) + 9 * Math.cos((y - x) / 450));
  const swell = smooth((nearest - 900) / 1500) * 2.5 * Math.sin(x / 380) * Math.cos(y / 310);
  return level + rise + meadows + hills + swell;
}

/** Heights to the decimetre, rows from north to south. */
export function sampleHeights(): Float32Array {
  const { columns, rows, west, north, stepLng, stepLat } = sampleGrid;
  return Float32Array.from({ length: columns * rows }, (_, i) => {
    const [x, y] = mapped(frame, [west + (i % columns) * stepLng, north - Math.floor(i / columns) * stepLat]);
    return Math.round(10 * heightAt(x, y)) / 10;
  });
}

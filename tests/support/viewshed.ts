import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fromArrayBuffer } from 'geotiff';
import { frameAt } from '../../src/figures/geometry/earth';
import { SightLines } from '../../src/figures/sight/sight-lines';
import type { Surroundings } from '../../src/figures/sight/surroundings';
import { heightsBy, type Terrain } from '../../src/figures/sight/terrain';
import { viewshed } from '../../src/figures/sight/viewshed';
import { tiff } from './tiff';
import { seeded } from './tolerance';

/** Cells to a side, and m to a side of a cell. */
export const cells = 1000;
export const cellM = 30;
/** Column and row of the eye, and its m above the ground. */
const eyeAt = [503, 478] as const;
const eyeHeight = 2;
/** 1 less the refraction coefficient of the design. */
const coefficient = 0.87;
const semiMajor = 6378137;

/** A made-up country: long ridges, round hills, and some metres of bumps between cells 90 m apart. */
export function country(): Float32Array {
  const random = seeded(1_914);
  const hills = Array.from({ length: 60 }, () => ({
    x: random() * cells,
    y: random() * cells,
    high: 20 + 130 * random(),
    wide: 12 + 60 * random(),
  }));
  const bumps = Float32Array.from({ length: 340 * 340 }, () => 6 * random());
  return Float32Array.from({ length: cells * cells }, (_, i) => {
    const [x, y] = [i % cells, Math.floor(i / cells)];
    const [u, v] = [Math.floor(x / 3), Math.floor(y / 3)];
    const bump = (a: number, b: number) => bumps[b * 340 + a] ?? 0;
    const [s, t] = [x / 3 - u, y / 3 - v];
    let height =
      300 +
      40 * Math.sin(x / 90 + 1.3 * Math.sin(y / 130)) +
      25 * Math.cos(y / 57) +
      (bump(u, v) * (1 - s) + bump(u + 1, v) * s) * (1 - t) +
      (bump(u, v + 1) * (1 - s) + bump(u + 1, v + 1) * s) * t;
    for (const hill of hills) {
      const d = ((x - hill.x) ** 2 + (y - hill.y) ** 2) / (2 * hill.wide ** 2);
      if (d < 12) height += hill.high * Math.exp(-d);
    }
    return height;
  });
}

/** Bilinear heights of the country, east and north in m from the eye. */
function groundOf(heights: Float32Array): (east: number, north: number) => number {
  const [column, row] = eyeAt;
  return (east, north) => {
    const [x, y] = [column + east / cellM, row - north / cellM];
    if (!(x >= 0 && y >= 0 && x <= cells - 1 && y <= cells - 1)) return NaN;
    const [left, top] = [Math.min(cells - 2, Math.floor(x)), Math.min(cells - 2, Math.floor(y))];
    const [u, v] = [x - left, y - top];
    const at = top * cells + left;
    const [a = NaN, b = NaN, c = NaN, d = NaN] = [
      heights[at],
      heights[at + 1],
      heights[at + cells],
      heights[at + cells + 1],
    ];
    return (a + (b - a) * u) * (1 - v) + (c + (d - c) * u) * v;
  };
}

const sink = coefficient / (2 * semiMajor);
const eyeOver = (heights: Float32Array) => (heights[eyeAt[1] * cells + eyeAt[0]] ?? NaN) + eyeHeight;

/** Whether a cell's ground is in sight along its own line, looked at every 3 m up to half a cell before it. */
export function exactly(heights: Float32Array, i: number): boolean {
  const ground = groundOf(heights);
  const [x, y] = [((i % cells) - eyeAt[0]) * cellM, (eyeAt[1] - Math.floor(i / cells)) * cellM];
  const distance = Math.hypot(x, y);
  const eye = eyeOver(heights);
  const steepness = ((heights[i] ?? NaN) - eye) / distance - sink * distance;
  for (let s = 3; s < distance - cellM / 2; s += 3)
    if ((ground((x * s) / distance, (y * s) / distance) - eye) / s - sink * s > steepness) return false;
  return true;
}

/** Which cells' ground is in sight, by ours; 1 for seen. Cells count from the north-west; of rows that are not asked for nothing is told. */
export function ours(heights: Float32Array, isAsked: (cell: number) => boolean = () => true): Uint8Array {
  const [column, row] = eyeAt;
  const heightAt = groundOf(heights);
  const frame = frameAt([3, 47]);
  const highest = heights.reduce((most, height) => Math.max(most, height), -Infinity);
  // Half a cell, as `terrainIn` steps: so no crest between two cells is stepped over.
  const terrain: Terrain = {
    frame,
    heightAt,
    heightsAlong: heightsBy(heightAt),
    ceilingAlong: () => highest,
    step: cellM / 2,
    highest,
  };
  const around: Surroundings = {
    frame,
    sink,
    obstacles: [],
    tops: [],
    highestTop: -Infinity,
    terrain,
    leafy: false,
    near: () => [],
  };
  // Finer than a spot needs: a cell at the edge is 30 m wide 15 km away.
  const lines = new SightLines({ rays: 16_384, growth: 0 });
  lines.stand(around, new Uint8Array(0), 0, 0, eyeOver(heights), [], []);
  const seen = new Uint8Array(cells * cells);
  const points = new Float64Array(9 * cells);
  for (let r = 0; r < cells; r++) {
    if (!isAsked(r * cells)) continue;
    for (let c = 0; c < cells; c++) {
      const [x, y, z] = [(c - column) * cellM, (row - r) * cellM, heights[r * cells + c] ?? NaN];
      for (let p = 0; p < 9; p += 3) {
        points[9 * c + p] = x;
        points[9 * c + p + 1] = y;
        points[9 * c + p + 2] = z;
      }
    }
    lines.look({ count: cells, points });
    for (let c = 0; c < cells; c++) seen[r * cells + c] = lines.inSight[c] === 3 ? 1 : 0;
  }
  return seen;
}

/** The same for all cells at once, carried from ring to ring. */
export function ringByRing(heights: Float32Array): Uint8Array {
  const seen = new Uint8Array(cells * cells);
  const [column, row] = eyeAt;
  const look = {
    heights,
    columns: cells,
    rows: cells,
    cell: cellM,
    column,
    row,
    eye: eyeHeight,
    target: 0,
    sink,
  };
  viewshed(look, seen, new Float64Array(cells * cells));
  return seen;
}

/** Whether GDAL's programs are on this machine (Debian's gdal-bin). */
export function hasGdal(): boolean {
  try {
    execFileSync('gdalinfo', ['--version'], { stdio: 'pipe' });
    return true;
  } catch {
    return false;
  }
}

/** The same by gdal_viewshed, and the ms that it took, reading and writing included. */
export async function gdals(
  heights: Float32Array,
): Promise<{ readonly seen: Uint8Array; readonly took: number }> {
  const folder = mkdtempSync(join(tmpdir(), 'sunside-viewshed-'));
  try {
    const [model, result] = [join(folder, 'model.tif'), join(folder, 'result.tif')];
    // UTM zone 31 north, so that GDAL knows the earth's radius.
    const [west, north] = [450_000, 5_300_000];
    const keys = [
      [1024, 1],
      [3072, 32631],
    ] as const;
    const plan = { columns: cells, rows: cells, heights, west, north, stepLng: cellM, stepLat: cellM, keys };
    writeFileSync(model, new Uint8Array(tiff(plan)));
    const [column, row] = eyeAt;
    const place = [west + (column + 0.5) * cellM, north - (row + 0.5) * cellM];
    const from = performance.now();
    execFileSync(
      'gdal_viewshed',
      [
        '-ox',
        `${place[0]}`,
        '-oy',
        `${place[1]}`,
        '-oz',
        `${eyeHeight}`,
        '-tz',
        '0',
        '-md',
        '0',
        '-cc',
        `${coefficient}`,
        model,
        result,
      ],
      { stdio: 'pipe' },
    );
    const took = performance.now() - from;
    const file = await fromArrayBuffer(new Uint8Array(readFileSync(result)).buffer);
    const [band] = await (await file.getImage()).readRasters({ interleave: false });
    return { seen: Uint8Array.from(band as ArrayLike<number>, (value) => (value === 255 ? 1 : 0)), took };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

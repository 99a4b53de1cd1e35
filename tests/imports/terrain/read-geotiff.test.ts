import { describe, expect, test } from 'vitest';
import { readGeotiff } from '../../../src/imports/terrain/read-geotiff';
import { tiff, type TiffPlan } from '../../support/tiff';
import { thorough } from '../../support/thorough';

const about = [8.5, 47.4] as const;
/** 4 x 3 samples from 8.49 E, 47.41 N; every one its own height. */
const plan: TiffPlan = {
  columns: 4,
  rows: 3,
  heights: [10, 11, 12, 13, 20, 21, 22, 23, 30, 31, 32, 33],
  west: 8.49,
  north: 47.41,
  stepLng: 0.01,
  stepLat: 0.008,
};
async function grid(change: Partial<TiffPlan> = {}) {
  const reading = await readGeotiff(tiff({ ...plan, ...change }), about);
  if (!reading.ok) throw new Error(reading.reason);
  return reading.grid;
}
async function refusal(source: ArrayBuffer): Promise<string> {
  const reading = await readGeotiff(source, about);
  return reading.ok ? 'read' : reading.reason;
}

describe('reading the ground from a GeoTIFF', () => {
  test('[F150] rows from north to south; a sample that is an area is known at its middle', async () => {
    const read = await grid();
    expect([read.columns, read.rows]).toEqual([4, 3]);
    expect([...read.heights]).toEqual(plan.heights);
    expect(read.west).toBeCloseTo(8.495, 10);
    expect(read.north).toBeCloseTo(47.406, 10);
    expect([read.stepLng, read.stepLat]).toEqual([0.01, 0.008]);
  });

  test('[F151] a sample that is a point is known where it is said to be', async () => {
    const read = await grid({ point: true });
    expect([read.west, read.north]).toEqual([8.49, 47.41]);
  });

  test.each([
    ['-9999\0', -9999],
    // Without the closing zero byte that many programs leave out.
    ['-9999', -9999],
    ['-3.4028234663852886e+38\0', -3.4028234663852886e38],
    ['nan\0', NaN],
  ])('[F152] what stands for no data (%j) is unknown', async (noData, written) => {
    const heights = [10, written, 12, 13, 20, 21, 22, 23, 30, 31, 32, 33];
    const read = await grid({ heights, noData });
    expect([...read.heights].slice(0, 3)).toEqual([10, NaN, 12]);
  });

  test('[F153] whole metres below the sea as well', async () => {
    const heights = [-4, 11, -9999, 13, 20, 21, 22, 23, 30, 31, 32, 33];
    const read = await grid({ format: 'int16', heights, noData: '-9999\0' });
    expect([...read.heights].slice(0, 4)).toEqual([-4, 11, NaN, 13]);
  });

  test('[F154] a matrix in place of tie point and scale; feet become metres', async () => {
    const matrix = [0.01, 0, 0, 8.49, 0, -0.008, 0, 47.41, 0, 0, 0, 0, 0, 0, 0, 1];
    const feet = [
      [1024, 2],
      [2048, 4326],
      [4099, 9002],
    ] as const;
    const read = await grid({ matrix, keys: feet });
    expect(read.west).toBeCloseTo(8.495, 10);
    expect(read.north).toBeCloseTo(47.406, 10);
    expect(read.heights[4]).toBeCloseTo(20 * 0.3048, 5);
  });

  test('[F155] of a large file only what lies about the airfield is read', async () => {
    const [columns, rows] = [1200, 900];
    const heights = Float32Array.from({ length: columns * rows }, (_, i) => i % 977);
    const read = await grid({ columns, rows, heights, west: 7, north: 48, stepLng: 0.0025, stepLat: 0.002 });
    expect(read.columns).toBeLessThan(260);
    expect(read.rows).toBeLessThan(200);
    const column = Math.round((read.west - 7) / 0.0025 - 0.5);
    const row = Math.round((48 - read.north) / 0.002 - 0.5);
    expect(read.heights[0]).toBe((row * columns + column) % 977);
    expect(read.north).toBeGreaterThan(47.4 + 0.18);
    expect(read.west + read.columns * 0.0025).toBeGreaterThan(8.5 + 0.27);
  });

  test('[F156] what cannot be read is refused in one plain sentence', async () => {
    const projected = [
      [1024, 1],
      [3072, 32632],
    ] as const;
    const other = [
      [1024, 2],
      [2048, 4258],
    ] as const;
    expect(await refusal(tiff({ ...plan, keys: projected }))).toMatch(/EPSG:4326.*EPSG:32632.*convert/);
    expect(await refusal(tiff({ ...plan, keys: other }))).toMatch(/EPSG:4258/);
    // Some programs leave out of which sort the system is. One that is said to be of another sort is not EPSG:4326.
    expect(await refusal(tiff({ ...plan, keys: [[2048, 4326]] }))).toBe('read');
    const contradictory: [number, number][] = [
      [1024, 3],
      [2048, 4326],
    ];
    expect(await refusal(tiff({ ...plan, keys: contradictory }))).toMatch(/in another system/);
    expect(await refusal(tiff({ ...plan, keys: [] }))).toMatch(/another system/);
    expect(await refusal(tiff({ ...plan, west: 20 }))).toMatch(/does not cover the airfield/);
    expect(await refusal(new TextEncoder().encode('{"type":"FeatureCollection"}').buffer)).toMatch(/no TIFF/);
    expect(await refusal(new ArrayBuffer(0))).toMatch(/no TIFF/);
    const rotated = [0.01, 0.001, 0, 8.49, 0.001, -0.008, 0, 47.41, 0, 0, 0, 0, 0, 0, 0, 1];
    expect(await refusal(tiff({ ...plan, matrix: rotated }))).toMatch(/north up/);
    expect(await refusal(tiff({ ...plan, stepLat: -0.008 }))).toMatch(/north up/);
    const cut = tiff({ ...plan, columns: 300, rows: 300, heights: new Float32Array(90_000) });
    expect(await refusal(cut.slice(0, 4000))).not.toBe('read');
  });

  test('[I211] whatever byte of it is damaged, a file is read or refused in words', async () => {
    const whole = new Uint8Array(tiff({ ...plan, noData: '-9999' }));
    // By one value in `npm test`, by both in `npm run thorough`.
    for (let at = 0; at < whole.length; at++)
      for (const byte of thorough ? [0, 0xff] : [at % 2 ? 0 : 0xff]) {
        const damaged = whole.slice();
        damaged[at] = byte;
        const reading = await readGeotiff(damaged.buffer, about);
        if (!reading.ok) expect(reading.reason.length).toBeGreaterThan(10);
        else {
          const { columns, rows, heights, west, north } = reading.grid;
          expect(heights.length).toBe(columns * rows);
          expect([west, north].every(Number.isFinite)).toBe(true);
        }
      }
  });
});

import { describe, expect, test } from 'vitest';
import { frameAt } from '../../../src/figures/geometry/earth';
import { terrainAt, terrainIn } from '../../../src/figures/sight/terrain';
import { gridOfTiles, heightOf, tilesAbout, tilesOf } from '../../../src/imports/terrain/terrarium';
import { reliefTile } from '../../../src/map/relief';

describe('heights from tiles', () => {
  test('[F182] the Terrarium encoding: red x 256 + green + blue / 256 - 32768', () => {
    expect(heightOf(128, 0, 0)).toBe(0);
    expect(heightOf(131, 232, 128)).toBe(1000.5);
    expect(heightOf(127, 255, 64)).toBe(-0.75);
  });

  test('[F183] the tiles about a place, as web maps count them', () => {
    // The formula that the tile schemes of the web are written down with: asinh of the latitude's tangent.
    for (const [lng, lat] of [
      [8.55, 47.45],
      [-0.46, 51.47],
      [151.17, -33.94],
    ] as const) {
      const column = Math.floor(((lng + 180) / 360) * 4096);
      const row = Math.floor(((1 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / Math.PI) / 2) * 4096);
      expect(tilesAbout([lng, lat], 0.0001, 12)).toMatchObject({
        left: column,
        top: row,
        across: 1,
        down: 1,
      });
    }
    const block = tilesAbout([8.55, 47.46], 0.072, 12);
    expect(block.across * block.down).toBeLessThanOrEqual(16);
    expect(block.left).toBeLessThanOrEqual(2145);
  });

  // The Aleutians and Fiji have airfields whose surroundings lie on both sides.
  test.each([
    ['just east of the antimeridian', -179.99],
    ['just west of it', 179.99],
  ])('[F400] %s, columns begin anew where the world ends', (_, lng) => {
    const block = tilesAbout([lng, -16.7], 0.072, 12);
    const tiles = tilesOf(block);
    expect(tiles).toHaveLength(block.across * block.down);
    const columns = new Set(tiles.map(({ x }) => x));
    expect(columns).toContain(0);
    expect(columns).toContain(4095);
    for (const x of columns) expect(x >= 0 && x <= 4095).toBe(true);
    // Side by side as they lie on the ground, from the west.
    expect(tiles.slice(0, block.across).map(({ x }) => (x > 2048 ? x - 4096 : x))).toEqual(
      Array.from({ length: block.across }, (_, i) => (tiles[0]?.x ?? NaN) - 4096 + i),
    );
  });

  test.each([52.3, -33.9, 69.7])(
    '[F184] a slope comes through tiles, grid and map as it was, at %s',
    (lat) => {
      const place = [18.2, lat] as const;
      const slope = ([lng, at]: readonly [number, number]) => 300 + 900 * (lng - 18.2) + 1700 * (at - lat);
      // A tile of our own making: the same pixels that the map's slopes are shaded by.
      const step = 0.002;
      const made = {
        columns: 401,
        rows: 401,
        west: 18.2 - 200 * step,
        north: lat + 200 * step,
        stepLng: step,
        stepLat: step,
        heights: Float32Array.from({ length: 401 * 401 }, (_, i) =>
          slope([18.2 + ((i % 401) - 200) * step, lat + (200 - Math.floor(i / 401)) * step]),
        ),
      };
      const block = tilesAbout(place, 0.05, 12);
      const tiles = Array.from({ length: block.across * block.down }, (_, i) => ({
        size: 256,
        pixels: reliefTile(
          made,
          12,
          block.left + (i % block.across),
          block.top + Math.floor(i / block.across),
        ),
      }));
      const grid = gridOfTiles(block, tiles);
      if (!grid) throw new Error('expected a grid');
      const terrain = terrainIn(grid, frameAt(place));
      for (const at of [place, [18.23, lat + 0.03], [18.15, lat - 0.04]] as const)
        expect(terrainAt(terrain, at)).toBeCloseTo(slope(at), 0);
      // A missing tile is ground that nobody knows.
      const holed = gridOfTiles(block, [null, ...tiles.slice(1)]);
      expect(holed?.heights[0]).toBeNaN();
      expect(
        gridOfTiles(
          block,
          tiles.map(() => null),
        ),
      ).toBeNull();
    },
  );
});

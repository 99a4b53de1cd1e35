import { DEG, RAD } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';
import type { ReadElevations } from './read-geotiff';

/** A square tile of pixels in the Terrarium encoding, four bytes each, 255 opaque. */
export interface HeightTile {
  readonly size: number;
  readonly pixels: Uint8ClampedArray;
}

/** m above mean sea level out of a pixel: red x 256 + green + blue / 256 - 32768 (Mapzen's terrain tiles). */
export const heightOf = (red: number, green: number, blue: number): number =>
  red * 256 + green + blue / 256 - 32_768;

/** Which tiles of a zoom level lie about a position. */
export interface TileBlock {
  readonly z: number;
  /** Columns count on across the antimeridian: `left` may be negative, and the last one beyond the world's last. */
  readonly left: number;
  readonly top: number;
  readonly across: number;
  readonly down: number;
}

/** Column and row of a position in tiles of zoom `z` (Web Mercator, as the tile schemes of the web have it). */
function tileAt([lng, lat]: Position, z: number): readonly [x: number, y: number] {
  const sin = Math.sin(lat * RAD);
  const n = 2 ** z;
  return [((lng + 180) / 360) * n, (0.5 - Math.log((1 + sin) / (1 - sin)) / (4 * Math.PI)) * n];
}

const latitudeOf = (y: number, z: number): number =>
  Math.atan(Math.sinh(Math.PI * (1 - (2 * y) / 2 ** z))) * DEG;

/** The tiles within `reach` degrees of latitude about a position, and as many m to either side. */
export function tilesAbout([lng, lat]: Position, reach: number, z: number): TileBlock {
  const wide = reach / Math.max(0.05, Math.cos(lat * RAD));
  const [west, south] = tileAt([lng - wide, Math.max(-85, lat - reach)], z);
  const [east, north] = tileAt([lng + wide, Math.min(85, lat + reach)], z);
  const [left, top] = [Math.floor(west), Math.floor(north)];
  return { z, left, top, across: Math.floor(east) - left + 1, down: Math.floor(south) - top + 1 };
}

/** The block's tiles as a server has them, row by row: beyond the antimeridian the columns begin anew. */
export function tilesOf({
  z,
  left,
  top,
  across,
  down,
}: TileBlock): readonly { readonly x: number; readonly y: number }[] {
  const columns = 2 ** z;
  return Array.from({ length: across * down }, (_, i) => ({
    x: (((left + (i % across)) % columns) + columns) % columns,
    y: top + Math.floor(i / across),
  }));
}

/**
 * The block's heights on longitude and latitude. Rows of tiles are closer together towards the poles; the grid's are
 * even, in between them heights are linear. A tile that is missing (null) is unknown ground.
 */
export function gridOfTiles(block: TileBlock, tiles: readonly (HeightTile | null)[]): ReadElevations | null {
  const { z, left, top, across, down } = block;
  const size = tiles.find((tile) => tile !== null)?.size;
  if (size === undefined) return null;
  const [columns, rows] = [across * size, down * size];
  const source = new Float32Array(columns * rows).fill(NaN);
  tiles.forEach((tile, k) => {
    if (tile?.size !== size) return;
    const [x0, y0] = [(k % across) * size, Math.floor(k / across) * size];
    for (let y = 0; y < size; y++)
      for (let x = 0; x < size; x++) {
        const at = 4 * (y * size + x);
        const [red = 0, green = 0, blue = 0, alpha = 0] = tile.pixels.subarray(at, at + 4);
        if (alpha > 0) source[(y0 + y) * columns + x0 + x] = heightOf(red, green, blue);
      }
  });
  const rowLatitude = (row: number) => latitudeOf(top + (row + 0.5) / size, z);
  const [north, south] = [rowLatitude(0), rowLatitude(rows - 1)];
  const stepLat = (north - south) / (rows - 1);
  const heights = new Float32Array(columns * rows);
  for (let row = 0, above = 0; row < rows; row++) {
    const lat = north - row * stepLat;
    while (above < rows - 2 && rowLatitude(above + 1) > lat) above++;
    const [a, b] = [rowLatitude(above), rowLatitude(above + 1)];
    const share = Math.max(0, Math.min(1, (a - lat) / (a - b)));
    for (let column = 0; column < columns; column++) {
      const from = source[above * columns + column] as number;
      const to = source[(above + 1) * columns + column] as number;
      heights[row * columns + column] = share === 0 ? from : share === 1 ? to : from + (to - from) * share;
    }
  }
  const stepLng = 360 / 2 ** z / size;
  const west = (left * 360) / 2 ** z - 180 + stepLng / 2;
  return { columns, rows, west, north, stepLng, stepLat, heights };
}

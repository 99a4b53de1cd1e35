import type { ReadElevations, TerrainReading } from '../imports/terrain/read-geotiff';
import type { LoadedTerrain } from '../state/terrain.svelte';
import type { Position } from '../survey/document';

/** Degrees of latitude round the airfield that tiles are fetched for (8 km), and their zoom level (25 m at 50 degrees). */
const reach = 0.072;
const zoom = 12;

/** The heights of a file, GeoTIFF or archive of tiles, about an airfield; why not, in words with the file's name. */
export async function fromFile(file: Blob, name: string, about: Position): Promise<LoadedTerrain | string> {
  const isArchive = (await file.slice(0, 7).text()) === 'PMTiles';
  const reading = isArchive ? await fromArchive(file, about) : await fromTiff(file, about);
  return reading.ok ? { grid: reading.grid, credit: null } : `${name} cannot be used: ${reading.reason}.`;
}

async function fromTiff(file: Blob, about: Position): Promise<TerrainReading> {
  const { readGeotiff } = await import('../imports/terrain/read-geotiff');
  return readGeotiff(file, about);
}

async function fromArchive(file: Blob, about: Position): Promise<TerrainReading> {
  const { openHeightArchive } = await import('../map/base/archive');
  const opened = await openHeightArchive(file);
  if (!opened.ok) return opened;
  const { archive } = opened;
  const grid = await fromTiles(about, (z, x, y) => archive.tile(z, x, y), Math.min(zoom + 2, archive.zoom));
  return grid ? { ok: true, grid } : { ok: false, reason: 'it does not cover the airfield' };
}

/** The heights about an airfield from tiles in the Terrarium encoding; null where there are none. */
export async function fromTiles(
  about: Position,
  tile: (z: number, x: number, y: number) => Promise<Blob | null>,
  z = zoom,
): Promise<ReadElevations | null> {
  const { gridOfTiles, tilesAbout, tilesOf } = await import('../imports/terrain/terrarium');
  const block = tilesAbout(about, reach, z);
  const tiles = await Promise.all(
    tilesOf(block).map(async ({ x, y }) => {
      const picture = await tile(z, x, y);
      return picture && pixelsOf(picture);
    }),
  );
  return gridOfTiles(block, tiles);
}

/** The pixels of a picture as they are in the file: no colour profile, no transparency mixed in. */
async function pixelsOf(picture: Blob): Promise<{ size: number; pixels: Uint8ClampedArray } | null> {
  const bitmap = await createImageBitmap(picture, { premultiplyAlpha: 'none', colorSpaceConversion: 'none' });
  const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
  if (!pen || bitmap.width !== bitmap.height) return null;
  pen.drawImage(bitmap, 0, 0);
  return { size: bitmap.width, pixels: pen.getImageData(0, 0, bitmap.width, bitmap.height).data };
}

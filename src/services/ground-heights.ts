import type { ReadElevations, TerrainReading } from '../imports/terrain/read-geotiff';
import type { LoadedTerrain, Terrain } from '../state/terrain.svelte';
import type { KeptFiles } from '../storage/kept-files';
import type { KeptText } from '../storage/kept-text';
import { pickFile, type FileKind } from '../storage/files';
import type { Position } from '../survey/document';
import type { GroundHeights } from '../ports/ground-heights';

const heightFile: FileKind = {
  mediaType: 'image/tiff',
  extensions: ['.tif', '.tiff', '.pmtiles'],
  description: 'Heights of the ground (GeoTIFF in EPSG:4326, or PMTiles in the Terrarium encoding)',
};
/** Mapzen's terrain tiles, open data on the cloud of Amazon; asked only when the user has switched them on. */
const online = {
  url: (z: number, x: number, y: number) =>
    `https://s3.amazonaws.com/elevation-tiles-prod/terrarium/${z}/${x}/${y}.png`,
  credit: 'Heights: Mapzen terrain tiles, from ArcticDEM, EU-DEM, SRTM, USGS and others',
} as const;
/** Degrees of latitude round the airfield that tiles are fetched for (8 km), and their zoom level (25 m at 50 degrees). */
const reach = 0.072;
const zoom = 12;
const kept = 'ground-heights';

/** The part of the composition root that knows where heights come from: files, tiles, and the sample's own. */
export class SunsideGroundHeights implements GroundHeights {
  readonly #terrain: Terrain;
  readonly #files: KeptFiles;
  readonly #choice: KeptText;
  readonly #sampleUrl: string;
  readonly #samplePlace: Position;

  constructor(
    terrain: Terrain,
    files: KeptFiles,
    choice: KeptText,
    sample: { readonly url: string; readonly near: Position },
  ) {
    this.#terrain = terrain;
    this.#files = files;
    this.#choice = choice;
    this.#sampleUrl = sample.url;
    this.#samplePlace = sample.near;
  }

  /** Another airfield is looked at: what was chosen is loaded for it. */
  async look(about: Position): Promise<void> {
    if (near(about, this.#samplePlace)) return this.#useSample(about);
    const chosen = this.#choice.read();
    if (chosen === 'online') return this.useOnline(about);
    if (chosen === 'file') return this.#useKept(about);
    this.#terrain.none();
  }

  none(): void {
    this.#choice.write('none');
    void this.#files.forget(kept);
    this.#terrain.none();
  }

  async useOnline(about: Position): Promise<void> {
    this.#choice.write('online');
    await this.#terrain.load('online', async () => {
      const fetched = async (z: number, x: number, y: number) => {
        const answer = await fetch(online.url(z, x, y));
        return answer.ok ? answer.blob() : null;
      };
      const grid = await fromTiles(about, zoom, fetched);
      return grid ? { grid, credit: online.credit } : 'there are no heights here; are you online?';
    });
  }

  async pickFile(about: Position): Promise<void> {
    const picked = await pickFile(heightFile);
    if (!picked) return;
    await this.#terrain.load('file', () => fromFile(picked.file, picked.file.name, about));
    if (this.#terrain.state !== 'loaded') return;
    this.#choice.write('file');
    await this.#files.keep(kept, picked.file);
  }

  async #useKept(about: Position): Promise<void> {
    await this.#terrain.load('file', async () => {
      const file = await this.#files.read(kept);
      return file ? fromFile(file, 'The file', about) : 'the file is not on this device any more';
    });
  }

  async #useSample(about: Position): Promise<void> {
    await this.#terrain.load('sample', async () => {
      const answer = await fetch(this.#sampleUrl);
      return answer.ok ? fromFile(await answer.blob(), 'The sample', about) : 'the sample is not there';
    });
  }
}

const near = (a: Position, b: Position) => Math.abs(a[0] - b[0]) < 0.1 && Math.abs(a[1] - b[1]) < 0.1;

async function fromFile(file: Blob, name: string, about: Position): Promise<LoadedTerrain | string> {
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
  const grid = await fromTiles(about, Math.min(zoom + 2, archive.zoom), (z, x, y) => archive.tile(z, x, y));
  return grid ? { ok: true, grid } : { ok: false, reason: 'it does not cover the airfield' };
}

async function fromTiles(
  about: Position,
  z: number,
  tile: (z: number, x: number, y: number) => Promise<Blob | null>,
): Promise<ReadElevations | null> {
  const { gridOfTiles, tilesAbout } = await import('../imports/terrain/terrarium');
  const block = tilesAbout(about, reach, z);
  const tiles = await Promise.all(
    Array.from({ length: block.across * block.down }, async (_, i) => {
      const picture = await tile(
        z,
        block.left + (i % block.across),
        block.top + Math.floor(i / block.across),
      );
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

import { FileSource, PMTiles, TileType } from 'pmtiles';

/** Tiles of a PMTiles archive, as pictures. */
export interface HeightArchive {
  /** The finest zoom level that it has. */
  readonly zoom: number;
  /** Null where it has no such tile. */
  tile(z: number, x: number, y: number): Promise<Blob | null>;
}

/** Opens an archive of raster tiles in the Terrarium encoding; a reason says why it is none. */
export async function openHeightArchive(
  file: Blob,
): Promise<
  { readonly ok: true; readonly archive: HeightArchive } | { readonly ok: false; readonly reason: string }
> {
  try {
    const archive = new PMTiles(new FileSource(new File([file], 'heights')));
    const { tileType, maxZoom } = await archive.getHeader();
    if (tileType !== TileType.Png && tileType !== TileType.Webp)
      return {
        ok: false,
        reason: 'its tiles are no pictures of heights (PNG or WebP in the Terrarium encoding)',
      };
    return {
      ok: true,
      archive: {
        zoom: maxZoom,
        tile: async (z, x, y) => {
          const found = await archive.getZxy(z, x, y);
          return found ? new Blob([found.data]) : null;
        },
      },
    };
  } catch {
    return { ok: false, reason: 'this is no PMTiles archive, or a damaged one' };
  }
}

import { FileSource, PMTiles, Protocol, TileType } from 'pmtiles';
import type { Credit } from '../../state/base-maps/ground';
import { UnusableBase } from './base-parts';
import { creditText } from './credit-text';

const protocol = new Protocol({ metadata: true });

/** Answers the map library's requests for addresses that begin with `pmtiles:`. */
export const archiveTile = protocol.tile;

/** A layer of the vector tiles, and which fields its features have. */
export interface VectorLayer {
  readonly id: string;
  readonly fields: readonly string[];
}

export interface Archive {
  /** What the map library is to ask for. */
  readonly url: string;
  readonly tiles: 'vector' | 'raster';
  readonly encoding: 'mvt' | 'mlt';
  readonly layers: readonly VectorLayer[];
  readonly credit: Credit;
  /** Nobody asks for its tiles any more: its directories and the file go. */
  readonly close: () => void;
}

/** How many archives answer for the map library now: those that lie under a survey. */
export const openArchives = (): number => protocol.tiles.size;

/**
 * Opens a PMTiles archive, version 3, on the net or in a blob; anew each time, since what could not be read is
 * remembered as such by an open one.
 */
export async function openArchive(from: string | Blob, key: string): Promise<Archive> {
  const archive = new PMTiles(typeof from === 'string' ? from : new FileSource(new File([from], key)));
  protocol.add(archive);
  const name = archive.source.getKey();
  // The same address may have been opened anew since: that one stays.
  const close = () => {
    if (protocol.tiles.get(name) === archive) protocol.tiles.delete(name);
  };
  try {
    const { tileType } = await archive.getHeader();
    if (tileType === TileType.Unknown)
      throw new UnusableBase('the archive does not say what kind of tiles it has');
    const metadata: unknown = await archive.getMetadata();
    return {
      url: `pmtiles://${name}`,
      tiles: tileType === TileType.Mvt || tileType === TileType.Mlt ? 'vector' : 'raster',
      encoding: tileType === TileType.Mlt ? 'mlt' : 'mvt',
      layers: vectorLayers(member(metadata, 'vector_layers')),
      credit: creditOf(member(metadata, 'attribution')),
      close,
    };
  } catch (error) {
    close();
    throw asWords(error, typeof from === 'string');
  }
}

const member = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined;

const creditOf = (attribution: unknown): Credit =>
  typeof attribution === 'string' ? creditText(attribution) : [];

function vectorLayers(list: unknown): VectorLayer[] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((layer: unknown) => {
    const [id, fields] = [member(layer, 'id'), member(layer, 'fields')];
    if (typeof id !== 'string') return [];
    return [{ id, fields: typeof fields === 'object' && fields !== null ? Object.keys(fields) : [] }];
  });
}

/** What the library says to programmers, in words for people; a network error stays what it is. */
function asWords(error: unknown, isRemote: boolean): unknown {
  if (error instanceof UnusableBase || !(error instanceof Error)) return error;
  const { message } = error;
  if (/Byte Serving/.test(message))
    return new UnusableBase(
      'its server hands out whole files only. An archive needs one that answers requests for a part of a file (Range)',
    );
  if (/spec version/.test(message)) return new UnusableBase('the archive is of a newer version of PMTiles');
  if (/response code/.test(message) || (isRemote && error instanceof TypeError)) return error;
  return new UnusableBase('it is no PMTiles archive, or a damaged one');
}

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

import { gzipSync } from 'node:zlib';
import { zxyToTileId } from 'pmtiles';

export interface ArchiveTile {
  readonly z: number;
  readonly x: number;
  readonly y: number;
  readonly data: Uint8Array;
}

/** Bytes of the header (PMTiles specification, version 3), and all that a reader asks for at first. */
const [headerLength, firstRead] = [127, 16_384];

/** A PMTiles archive with a root directory alone, which small ones may have. Tiles that are `packed` are gzipped. */
export function writePmtiles(
  tiles: readonly ArchiveTile[],
  kind: 'mvt' | 'png',
  metadata: object,
  packed = kind === 'mvt',
): Buffer {
  const sorted = tiles
    .map((tile) => ({
      id: zxyToTileId(tile.z, tile.x, tile.y),
      data: packed ? gzipSync(tile.data) : tile.data,
    }))
    .sort((a, b) => a.id - b.id);
  const root = gzipSync(directory(sorted));
  if (headerLength + root.length > firstRead) throw new Error('expected few enough tiles for one directory');
  const meta = gzipSync(JSON.stringify(metadata));
  const data = Buffer.concat(sorted.map((tile) => tile.data));
  const zooms = tiles.map(({ z }) => z);

  const header = Buffer.alloc(headerLength);
  header.write('PMTiles', 0, 'latin1');
  header[7] = 3;
  const lengths = [root.length, meta.length, 0, data.length];
  let offset = headerLength;
  lengths.forEach((length, i) => {
    header.writeBigUInt64LE(BigInt(offset), 8 + 16 * i);
    header.writeBigUInt64LE(BigInt(length), 16 + 16 * i);
    offset += length;
  });
  for (const at of [72, 80, 88]) header.writeBigUInt64LE(BigInt(tiles.length), at);
  // Clustered; gzip for directories and metadata; the tiles' compression and kind; zooms.
  header.set([1, 2, packed ? 2 : 1, kind === 'mvt' ? 1 : 2, Math.min(...zooms), Math.max(...zooms)], 96);
  [-180, -85, 180, 85].forEach((degrees, i) => header.writeInt32LE(degrees * 1e7, 102 + 4 * i));
  return Buffer.concat([header, root, meta, data]);
}

function directory(tiles: readonly { readonly id: number; readonly data: Uint8Array }[]): Buffer {
  const numbers = [
    tiles.length,
    ...tiles.map(({ id }, i) => id - (tiles[i - 1]?.id ?? 0)),
    ...tiles.map(() => 1),
    ...tiles.map(({ data }) => data.length),
    // 0: right behind the tile before; anything else is the offset and one more.
    ...tiles.map((_, i) => (i === 0 ? 1 : 0)),
  ];
  return Buffer.from(numbers.flatMap(varint));
}

function varint(value: number): number[] {
  const bytes: number[] = [];
  for (let rest = value; ; rest = Math.floor(rest / 128)) {
    if (rest < 128) return [...bytes, rest];
    bytes.push((rest % 128) | 128);
  }
}

import { archiveMediaType } from './archive-media-type';

/** One file in an archive. */
export interface ArchivedFile {
  readonly name: string;
  readonly text: string;
  /** ms since 1970; a zip keeps it to two seconds. */
  readonly changed: number;
}

/** More than any person's surveys; an archive that claims more is damaged, or made to fill the memory. */
const mostFiles = 10_000;
const mostBytes = 512 * 1024 * 1024;

/** Every zip begins with a local file header (APPNOTE.TXT 4.3.7), an empty one with the end record (4.3.16). */
export const looksLikeArchive = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);

/** Packs files one by one as they come, so that their texts are never in memory all at once. */
export async function pack(files: AsyncIterable<ArchivedFile>): Promise<Blob> {
  const { Zip, ZipDeflate, strToU8 } = await import('fflate');
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((error, piece) => {
    if (error) throw error;
    pieces.push(new Uint8Array(piece));
  });
  for await (const { name, text, changed } of files) {
    const file = new ZipDeflate(name, { level: 6 });
    file.mtime = changed;
    zip.add(file);
    file.push(strToU8(text), true);
  }
  zip.end();
  return new Blob(pieces, { type: archiveMediaType });
}

export type Unpacked =
  | { readonly ok: true; readonly files: readonly Omit<ArchivedFile, 'changed'>[] }
  | { readonly ok: false; readonly reason: string };

/** The files of an archive whose names end with one of `extensions`; folders are left aside. */
export async function unpack(bytes: Uint8Array, extensions: readonly string[]): Promise<Unpacked> {
  const { unzipSync } = await import('fflate');
  let count = 0;
  let size = 0;
  const decoder = new TextDecoder();
  try {
    const entries = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        const base = name.split('/').at(-1) ?? '';
        // Some systems put a twin of every file, with its icon and the like, into the archive as "._name".
        if (base.startsWith('.') || !extensions.some((end) => base.toLowerCase().endsWith(end))) return false;
        count++;
        size += originalSize;
        if (count > mostFiles || size > mostBytes) throw new Error('it holds more than surveys could be');
        return true;
      },
    });
    const files = Object.entries(entries).map(([name, content]) => ({
      name: name.split('/').at(-1) ?? name,
      text: decoder.decode(content),
    }));
    return { ok: true, files };
  } catch (error) {
    return { ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
}

/** A text in as few bytes as deflate makes of it (RFC 1951). */
export async function packText(text: string): Promise<Uint8Array> {
  const { deflateSync, strToU8 } = await import('fflate');
  return deflateSync(strToU8(text), { level: 9 });
}

export type UnpackedText =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: 'broken' | 'too-large' };

/** The text that was packed, of up to `most` bytes. */
export async function unpackText(packed: Uint8Array, most: number): Promise<UnpackedText> {
  const { Inflate } = await import('fflate');
  const pieces: Uint8Array[] = [];
  let size = 0;
  let ended = false;
  const inflate = new Inflate((piece, final) => {
    size += piece.length;
    ended = final;
    if (size <= most) pieces.push(piece);
  });
  try {
    // In small steps: a few bytes can claim to be gigabytes, which are never to stand in memory.
    for (let at = 0; at < packed.length && size <= most; at += packedStep)
      inflate.push(packed.subarray(at, at + packedStep), at + packedStep >= packed.length);
    if (size > most) return { ok: false, why: 'too-large' };
    const text = new Uint8Array(size);
    let at = 0;
    for (const piece of pieces) {
      text.set(piece, at);
      at += piece.length;
    }
    if (!ended) return { ok: false, why: 'broken' };
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(text) };
  } catch {
    return { ok: false, why: 'broken' };
  }
}

/** Bytes; deflate makes at most about 1,032 times as many of them. */
const packedStep = 256;

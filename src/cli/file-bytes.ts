import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { Read } from './arguments';

/** Bytes that a survey and a model of the ground have at most. */
export const longestSurvey = 300_000_000;
export const longestTerrain = 1_500_000_000;
const piece = 1 << 20;

/** The bytes of a file or a pipe, up to `most`, or why there are none: devices and folders end nowhere, or hold nothing. */
export function bytesOf(file: string, most: number): Read<Buffer> {
  const tooLong = `it is longer than ${most / 1e6} MB`;
  const refused = (why: string): Read<never> => ({ ok: false, reason: `${file} cannot be read: ${why}` });
  try {
    const handle = openSync(file, 'r');
    try {
      const is = fstatSync(handle);
      if (is.isDirectory()) return refused('it is a folder');
      if (!is.isFile() && !is.isFIFO()) return refused('it is a device, and a file or a pipe is expected');
      if (is.size > most) return refused(tooLong);
      return read(handle, most) ?? refused(tooLong);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    return refused(error instanceof Error ? error.message : String(error));
  }
}

function read(handle: number, most: number): Read<Buffer> | null {
  const pieces: Buffer[] = [];
  let length = 0;
  for (;;) {
    const buffer = Buffer.allocUnsafe(piece);
    const got = readSync(handle, buffer);
    if (got === 0) return { ok: true, value: Buffer.concat(pieces) };
    length += got;
    if (length > most) return null;
    pieces.push(buffer.subarray(0, got));
  }
}

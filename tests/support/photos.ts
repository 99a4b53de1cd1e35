import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A JPEG of one grey pixel. */
export const onePixel = Buffer.from(
  '/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAAMCAgICAgMCAgIDAwMDBAYEBAQEBAgGBgUGCQgKCgkICQkKDA8MCgsOCwkJDRENDg8QEBEQCgwSExIQEw8QEBD/yQALCAABAAEBAREA/8wABgAQEAX/2gAIAQEAAD8A0s8g/9k=',
  'base64',
);

/** Whether the independent writer of metadata is there (Debian: libimage-exiftool-perl). */
export const exiftool = spawnSync('exiftool', ['-ver']).status === 0;

export const aFolder = (): string => mkdtempSync(join(tmpdir(), 'photos-'));

/** Writes a photograph with these tags, by exiftool ("DateTimeOriginal": "2026:06:21 18:00:01"). */
export function writePhoto(
  folder: string,
  name: string,
  tags: Readonly<Record<string, string | number>>,
  picture: Buffer = onePixel,
): string {
  const path = join(folder, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, picture);
  if (Object.keys(tags).length > 0)
    execFileSync('exiftool', [
      '-q',
      '-overwrite_original',
      ...Object.entries(tags).map(([tag, value]) => `-${tag}=${value}`),
      path,
    ]);
  return path;
}

export function bytesOfFile(path: string): ArrayBuffer {
  const bytes = readFileSync(path);
  return new Uint8Array(bytes).buffer;
}

type Entry = readonly [tag: number, type: number, count: number, value: number];

/** A TIFF with one directory at its beginning, and what it names as the next one. */
export function tiffWith(entries: readonly Entry[], next: number): Buffer {
  const out = Buffer.alloc(14 + entries.length * 12);
  out.write('II', 0);
  out.writeUInt16LE(42, 2);
  out.writeUInt32LE(8, 4);
  out.writeUInt16LE(entries.length, 8);
  entries.forEach(([tag, type, n, value], i) => {
    out.writeUInt16LE(tag, 10 + i * 12);
    out.writeUInt16LE(type, 12 + i * 12);
    out.writeUInt32LE(n, 14 + i * 12);
    out.writeUInt32LE(value, 18 + i * 12);
  });
  out.writeUInt32LE(next, 10 + entries.length * 12);
  return out;
}

/** A JPEG of nothing but these tags. */
export function jpegWith(tiff: Buffer): Buffer {
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(tiff.length + 8, 4);
  return Buffer.concat([head, Buffer.from('Exif\0\0'), tiff, Buffer.from([0xff, 0xd9])]);
}

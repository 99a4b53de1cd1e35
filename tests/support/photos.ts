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

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../../src/imports/photos/read-photo';
import { aFolder, bytesOfFile, exiftool, onePixel, writePhoto } from '../../support/photos';

const folder = aFolder();
let count = 0;
const written = (tags: Readonly<Record<string, string | number>>) => {
  const name = `p${++count}.jpg`;
  return readPhoto(name, bytesOfFile(writePhoto(folder, name, tags)));
};
const plain = { DateTimeOriginal: '2026:06:21 18:00:01' };

// Debian's libimage-exiftool-perl writes the files: without it there is nothing to compare with.
describe.skipIf(!exiftool)('[L30] photographs written by exiftool are read right', () => {
  it('time with its zone, lens, exposure, size and rating', async () => {
    const photo = await written({
      ...plain,
      OffsetTimeOriginal: '+02:00',
      SubSecTimeOriginal: '25',
      FocalLength: 400,
      FNumber: 7.1,
      ExposureTime: '1/1000',
      ISO: 200,
      Model: 'One Camera',
      ExifImageWidth: 6000,
      ExifImageHeight: 4000,
      'XMP:Rating': 4,
    });
    expect(photo).toEqual({
      file: 'p1.jpg',
      clock: '2026-06-21T18:00:01.25',
      offset: 120,
      position: null,
      model: 'One Camera',
      focalLength: 400,
      fNumber: 7.1,
      exposure: 0.001,
      iso: 200,
      width: 6000,
      height: 4000,
      pixelsPerMm: null,
      rating: 4,
      doubts: [],
    });
  });

  it.each([
    ['-05:30', -330],
    ['+00:00', 0],
    ['Z', 0],
    ['   :  ', null],
  ])('the offset %s', async (offset, minutes) => {
    expect(await written({ ...plain, 'OffsetTimeOriginal#': offset })).toMatchObject({
      offset: minutes,
      doubts: [],
    });
  });

  it('a missing zone is no doubt of the file: the airfield’s goes', async () => {
    expect(await written(plain)).toMatchObject({ clock: '2026-06-21T18:00:01', offset: null, doubts: [] });
  });

  it('a frame that was turned keeps the sensor’s own size', async () => {
    const photo = await written({
      ...plain,
      'Orientation#': 6,
      ExifImageWidth: 6000,
      ExifImageHeight: 4000,
    });
    expect(photo).toMatchObject({ width: 6000, height: 4000 });
  });

  it('south and west are negative; owner and serial numbers come out nowhere', async () => {
    const photo = await written({
      ...plain,
      GPSLatitude: 33.5,
      GPSLatitudeRef: 'S',
      GPSLongitude: 70.25,
      GPSLongitudeRef: 'W',
      SerialNumber: 'SN12345',
      OwnerName: 'Nobody Atall',
      Artist: 'Nobody Atall',
      'XMP:CreatorTool': 'Nobody Atall',
    });
    expect(photo.position?.map((x) => Number(x.toFixed(6)))).toEqual([-70.25, -33.5]);
    expect(JSON.stringify(photo)).not.toMatch(/SN12345|Nobody/);
  });

  it('a receiver without a fix, and a clock that was never set, are doubts', async () => {
    const photo = await written({
      'DateTimeOriginal#': '0000:00:00 00:00:00',
      GPSLatitude: 0,
      GPSLatitudeRef: 'N',
      GPSLongitude: 0,
      GPSLongitudeRef: 'E',
    });
    expect(photo).toMatchObject({ clock: null, position: null });
    expect(photo.doubts).toHaveLength(2);
  });

  it.each([
    ['-1', 0],
    ['0', 0],
    ['5', 5],
  ])('a rating of %s', async (rating, kept) => {
    expect(await written({ ...plain, 'XMP:Rating': rating })).toMatchObject({ rating: kept });
  });

  it('raw files that are TIFF underneath', async () => {
    const path = join(folder, 'frame.tif');
    // One grey pixel, by the TIFF 6.0 text: eight entries, little-endian.
    const entries = [
      [256, 3, 1, 1],
      [257, 3, 1, 1],
      [258, 3, 1, 8],
      [259, 3, 1, 1],
      [262, 3, 1, 1],
      [273, 4, 1, 8],
      [278, 3, 1, 1],
      [279, 4, 1, 1],
    ] as const;
    writeFileSync(path, ifd(entries, 0));
    execFileSync('exiftool', [
      '-q',
      '-overwrite_original',
      '-DateTimeOriginal=2026:06:21 18:00:01',
      '-FocalLength=300',
      path,
    ]);
    expect(await readPhoto('frame.tif', bytesOfFile(path))).toMatchObject({
      clock: '2026-06-21T18:00:01',
      focalLength: 300,
    });
  });
});

type Entry = readonly [tag: number, type: number, count: number, value: number];

/** A TIFF with one directory at its beginning, and what it names as the next one. */
function ifd(entries: readonly Entry[], next: number): Buffer {
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

function jpegWith(tiff: Buffer): Buffer {
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(tiff.length + 8, 4);
  return Buffer.concat([head, Buffer.from('Exif\0\0'), tiff, Buffer.from([0xff, 0xd9])]);
}

describe('[L31] hostile files are a doubt beside the name, and nothing else', () => {
  it.each([
    ['empty', Buffer.alloc(0)],
    ['cut off in its header', onePixel.subarray(0, 30)],
    ['no photograph', Buffer.from('dear diary, today it rained')],
    ['a directory that is its own successor', jpegWith(ifd([[0x8769, 4, 1, 8]], 8))],
    [
      'directories that contain one another',
      jpegWith(
        ifd(
          [
            [0x014a, 4, 1, 8],
            [0x8769, 4, 1, 8],
            [0x8825, 4, 1, 8],
            [0xa005, 4, 1, 8],
          ],
          8,
        ),
      ),
    ],
    [
      'a thumbnail of 50 MB',
      jpegWith(
        ifd(
          [
            [0x0201, 4, 1, 8],
            [0x0202, 4, 1, 50_000_000],
          ],
          0,
        ),
      ),
    ],
    ['a text of two gigabytes', jpegWith(ifd([[0x9003, 2, 0x7fffffff, 8]], 0))],
    ['a pointer behind the end', jpegWith(ifd([[0x8769, 4, 1, 0x7fffffff]], 0))],
  ])('%s', async (_, bytes) => {
    const photo = await readPhoto('x.jpg', new Uint8Array(bytes).buffer);
    expect(photo).toMatchObject({ file: 'x.jpg', clock: null });
    expect(photo.doubts.length).toBeGreaterThan(0);
    for (const words of photo.doubts) expect(words).not.toMatch(/undefined|DataView|Error/);
  });
});

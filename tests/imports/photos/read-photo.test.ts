import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../../src/imports/photos/read-photo';
import {
  aFolder,
  bytesOfFile,
  exiftool,
  jpegWith,
  onePixel,
  tiffWith,
  writePhoto,
} from '../../support/photos';

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

  it('HEIC, whose boxes hold a TIFF: read as exiftool reads it', async () => {
    const tiff = join(folder, 'inside.tif');
    writeFileSync(tiff, onePixelTiff());
    execFileSync('exiftool', [
      '-q',
      '-overwrite_original',
      '-DateTimeOriginal=2026:06:21 18:00:01',
      '-OffsetTimeOriginal=+02:00',
      '-FocalLength=300',
      tiff,
    ]);
    const path = join(folder, 'frame.heic');
    writeFileSync(path, heicWith(readFileSync(tiff)));
    const told = execFileSync('exiftool', ['-s3', '-DateTimeOriginal', path], { encoding: 'utf8' });
    expect(told.trim()).toBe('2026:06:21 18:00:01');
    expect(await readPhoto('frame.heic', bytesOfFile(path))).toMatchObject({
      clock: '2026-06-21T18:00:01',
      offset: 120,
      focalLength: 300,
    });
    // The same file, cut off before what its boxes name.
    const cut = readFileSync(path).subarray(0, 140);
    const broken = await readPhoto('cut.heic', new Uint8Array(cut).buffer);
    expect(broken.clock).toBeNull();
    expect(broken.doubts.length).toBeGreaterThan(0);
  });

  it.each([
    ['inches', 2, 4233.33, 4233.33 / 25.4],
    ['cm', 3, 1666.67, 166.667],
    ['none', 1, 166.667, null],
  ])('pixels a mm of the sensor, written by %s', async (_, unit, resolution, expected) => {
    const photo = await written({
      ...plain,
      FocalPlaneXResolution: resolution,
      'FocalPlaneResolutionUnit#': unit,
    });
    if (expected === null) expect(photo.pixelsPerMm).toBeNull();
    else expect(photo.pixelsPerMm).toBeCloseTo(expected, 2);
  });

  it('raw files that are TIFF underneath, a DNG among them', async () => {
    const path = join(folder, 'frame.dng');
    writeFileSync(path, onePixelTiff());
    execFileSync('exiftool', [
      '-q',
      '-overwrite_original',
      '-DateTimeOriginal=2026:06:21 18:00:01',
      '-FocalLength=300',
      '-DNGVersion=1.4.0.0',
      path,
    ]);
    expect(await readPhoto('frame.dng', bytesOfFile(path))).toMatchObject({
      clock: '2026-06-21T18:00:01',
      focalLength: 300,
    });
  });
});

/** One grey pixel, by the TIFF 6.0 text: eight entries, little-endian. */
function onePixelTiff(): Buffer {
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
  return tiffWith(entries, 0);
}

/** The least HEIF file that holds an Exif item (ISO/IEC 14496-12 and 23008-12): ftyp, meta with hdlr, iinf and iloc, mdat. */
function heicWith(tiff: Buffer): Buffer {
  const u16 = (n: number) => Buffer.from([n >> 8, n & 255]);
  const u32 = (n: number) => Buffer.from([n >>> 24, (n >> 16) & 255, (n >> 8) & 255, n & 255]);
  const box = (type: string, ...parts: readonly Buffer[]) => {
    const body = Buffer.concat(parts);
    return Buffer.concat([u32(body.length + 8), Buffer.from(type), body]);
  };
  const full = (type: string, version: number, ...parts: readonly Buffer[]) =>
    box(type, Buffer.from([version, 0, 0, 0]), ...parts);
  const payload = Buffer.concat([u32(0), tiff]);
  const ftyp = box('ftyp', Buffer.from('heic'), u32(0), Buffer.from('mif1heic'));
  const infe = full('infe', 2, u16(1), u16(0), Buffer.from('Exif'), Buffer.from([0]));
  const meta = (offset: number) =>
    full(
      'meta',
      0,
      full('hdlr', 0, u32(0), Buffer.from('pict'), Buffer.alloc(13)),
      full('pitm', 0, u16(1)),
      full('iinf', 0, u16(1), infe),
      full(
        'iloc',
        0,
        Buffer.from([0x44, 0]),
        u16(1),
        u16(1),
        u16(0),
        u16(1),
        u32(offset),
        u32(payload.length),
      ),
    );
  const start = ftyp.length + meta(0).length + 8;
  return Buffer.concat([ftyp, meta(start), box('mdat', payload)]);
}

describe('[L31] hostile files are a doubt beside the name, and nothing else', () => {
  it.each([
    ['empty', Buffer.alloc(0)],
    ['cut off in its header', onePixel.subarray(0, 30)],
    ['no photograph', Buffer.from('dear diary, today it rained')],
    ['a directory that is its own successor', jpegWith(tiffWith([[0x8769, 4, 1, 8]], 8))],
    [
      'directories that contain one another',
      jpegWith(
        tiffWith(
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
        tiffWith(
          [
            [0x0201, 4, 1, 8],
            [0x0202, 4, 1, 50_000_000],
          ],
          0,
        ),
      ),
    ],
    ['a text of two gigabytes', jpegWith(tiffWith([[0x9003, 2, 0x7fffffff, 8]], 0))],
    ['a pointer behind the end', jpegWith(tiffWith([[0x8769, 4, 1, 0x7fffffff]], 0))],
  ])('%s', async (_, bytes) => {
    const photo = await readPhoto('x.jpg', new Uint8Array(bytes).buffer);
    expect(photo).toMatchObject({ file: 'x.jpg', clock: null });
    expect(photo.doubts.length).toBeGreaterThan(0);
    for (const words of photo.doubts) expect(words).not.toMatch(/undefined|DataView|Error/);
  });
});

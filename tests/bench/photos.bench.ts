import { readPhoto } from '../../src/imports/photos/read-photo';
import { aFolder, bytesOfFile, exiftool, writePhoto } from '../support/photos';

const photographs = 2000;

/** Reading what 2,000 JPEGs say of themselves, one after the other as the worker does; the disk is not counted. */
export async function readPhotographs(): Promise<void> {
  if (!exiftool) return console.log('photographs: exiftool is not here to write one');
  const path = writePhoto(aFolder(), 'one.jpg', {
    DateTimeOriginal: '2026:06:21 18:00:01',
    OffsetTimeOriginal: '+02:00',
    FocalLength: 300,
    FNumber: 7.1,
    ExposureTime: 0.002,
    ISO: 200,
    GPSLatitude: 50.918,
    GPSLatitudeRef: 'N',
    GPSLongitude: 18.16,
    GPSLongitudeRef: 'E',
    'XMP:Rating': 4,
  });
  const bytes = bytesOfFile(path);
  const from = performance.now();
  for (let i = 0; i < photographs; i++) await readPhoto(`${i}.jpg`, bytes.slice(0));
  const all = performance.now() - from;
  console.log(`photographs (${photographs} JPEG headers; budget 5 s, in a worker)`);
  console.log(
    `  read                  ${all.toFixed(0)} ms, ${((photographs / all) * 1000).toFixed(0)} a second`,
  );
}

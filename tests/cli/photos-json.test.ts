import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { figuresJson } from '../../src/cli/figures-json';
import { photosIn, photosJson } from '../../src/cli/photos-json';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';
import { aFolder, exiftool, writePhoto } from '../support/photos';

const contents = contentsOf(
  [
    runwayFeature('rwy', [8.5, 47.4], [8.535, 47.4], [{ designator: '09' }, { designator: '27' }]),
    spotFeature('mound', [8.51, 47.396]),
  ],
  {
    site: { elevation: 430, timeZone: 'Europe/Zurich' },
    subjects: [plainSubject],
    kit: plainKit,
    movements: [{ id: 'm', date: '2026-06-21', time: '18:01', use: 'arrival', type: 'plain', runway: '27' }],
  },
);
const here = { GPSLatitude: 47.396, GPSLatitudeRef: 'N', GPSLongitude: 8.51, GPSLongitudeRef: 'E' };

// Debian's libimage-exiftool-perl writes the files.
describe.skipIf(!exiftool)('what --photos adds', () => {
  const folder = aFolder();
  // In a hook: what stands in a describe is run even where it is skipped.
  beforeAll(() => {
    writePhoto(folder, 'b.JPG', {
      DateTimeOriginal: '2026:06:21 18:00:00',
      OffsetTimeOriginal: '+02:00',
      FocalLength: 300,
      ...here,
    });
    writePhoto(folder, 'sub/a.jpeg', { DateTimeOriginal: '2026:06:21 18:00:10', ...here });
    writePhoto(folder, 'c.jpg', {});
    writeFileSync(join(folder, 'd.Jpg'), 'no photograph');
    writeFileSync(join(folder, 'notes.txt'), 'no photograph either');
  });

  it('[L44] the members of the design: every .jpg and .jpeg in any case, relative to the folder', async () => {
    const names = photosIn(folder);
    expect(names).toEqual({ ok: true, value: ['b.JPG', 'c.jpg', 'd.Jpg', 'sub/a.jpeg'] });
    const photos = await photosJson(folder, names.ok ? names.value : [], contents, null, null);
    expect(Object.keys(photos[0] ?? {})).toEqual(
      'file pass time spot path subject focalLength needed light lightAngle doubts'.split(' '),
    );
    const best = figuresJson(contents, [], Date.parse('2026-06-21T16:00:00Z'), null).spots[0]?.paths.find(
      ({ path }) => path === 'rwy/27/arrival',
    )?.best;
    expect(photos[0]).toEqual({
      file: 'b.JPG',
      pass: 1,
      time: '2026-06-21T16:00:00Z',
      spot: 'mound',
      path: 'rwy/27/arrival',
      subject: 'plain',
      focalLength: 300,
      needed: best?.focalLength,
      light: best?.light,
      lightAngle: best?.lightAngle,
      doubts: [],
    });
    expect(photos[3]).toMatchObject({ pass: 1, time: '2026-06-21T16:00:10Z', focalLength: null });
    for (const unread of photos.slice(1, 3)) {
      expect(unread).toMatchObject({ pass: null, time: null, spot: null, needed: null, light: null });
      expect(unread.doubts).toHaveLength(1);
    }
  });

  it('[L45] a folder that is not there is one plain line', () => {
    expect(photosIn(join(folder, 'nowhere'))).toMatchObject({ ok: false });
    expect(photosIn(join(folder, 'c.jpg'))).toMatchObject({ ok: false });
  });
});

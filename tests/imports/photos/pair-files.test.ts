import { describe, expect, it } from 'vitest';
import { pairFiles } from '../../../src/imports/photos/pair-files';
import { readRating, sidecarRating } from '../../../src/imports/photos/rating';

const paired = (...names: readonly string[]) =>
  pairFiles(names, (name) => name).map(({ photo, sidecar }) => [photo, sidecar]);

describe('[L32] files of a folder', () => {
  it('raw and JPEG of one name are one frame, whatever their case', () => {
    expect(paired('b.NEF', 'a.JPG', 'a.nef', 'B.jpeg')).toEqual([
      ['a.JPG', null],
      ['B.jpeg', null],
    ]);
  });

  it('XMP files belong to the frame of their name, and what is no photograph is passed over', () => {
    expect(paired('a.jpg', 'a.xmp', 'b.arw', 'b.arw.xmp', 'notes.txt', 'x.y/plain')).toEqual([
      ['a.jpg', 'a.xmp'],
      ['b.arw', 'b.arw.xmp'],
    ]);
  });

  it('the same name in two folders is two frames', () => {
    expect(paired('1/a.jpg', '2/a.jpg')).toHaveLength(2);
  });
});

describe('[L33] ratings', () => {
  it.each([
    ['<rdf:Description xmp:Rating="3" />', 3],
    ['<xmp:Rating>5</xmp:Rating>', 5],
    ["<rdf:Description xmp:Rating = '-1'/>", 0],
    ['<rdf:Description xmp:Label="Red"/>', null],
    ['<xmp:Rating>9</xmp:Rating>', null],
  ])('%s', (xmp, rating) => {
    expect(sidecarRating(xmp)).toBe(rating);
  });

  it('what is no number is no rating', () => {
    for (const value of ['', 'good', null, undefined, NaN, {}]) expect(readRating(value)).toBeNull();
  });
});

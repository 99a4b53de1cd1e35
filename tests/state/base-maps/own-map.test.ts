import { describe, expect, test } from 'vitest';
import { readKeptBases } from '../../../src/state/base-maps/own-map';

const tiles = {
  id: 'own-a',
  name: 'Tiles',
  kind: 'tiles',
  address: 'https://tiles.example.org/{z}/{x}/{y}.png',
  credit: 'Somebody',
  maxZoom: 17,
  size: null,
};

describe('base maps kept on the device', () => {
  test('[M4] come back as they were', () => {
    const kept = { chosen: 'own-a', pale: false, own: [tiles] };
    expect(readKeptBases(JSON.stringify(kept))).toEqual(kept);
  });

  test.each([null, '', 'nonsense', '[]', '"x"', '{"own":7,"chosen":5,"pale":"yes"}'])(
    '[M4] %s is the plain plan',
    (text) => expect(readKeptBases(text)).toEqual({ chosen: '', pale: true, own: [] }),
  );

  test('[M4] an entry that makes no sense is left out, a broken field of a good one takes its default', () => {
    const text = JSON.stringify({
      own: [
        { ...tiles, kind: 'song' },
        { ...tiles, id: '' },
        { ...tiles, address: null },
        { ...tiles, maxZoom: 400 },
        null,
      ],
    });
    expect(readKeptBases(text).own).toEqual([{ ...tiles, maxZoom: 19 }]);
  });
});

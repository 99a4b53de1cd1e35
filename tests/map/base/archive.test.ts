import { beforeAll, describe, expect, test } from 'vitest';
import { openArchive, openArchives } from '../../../src/map/base/archive';
import { neutralLayers } from '../../../styles/neutral-layers';
import { rasterArchive, vectorArchive } from '../../support/tile-server';

const blob = (bytes: Uint8Array | string) => new Blob([bytes as BlobPart]);

describe('a PMTiles archive', () => {
  test('[M13] says what it has', async () => {
    expect(await openArchive(blob(vectorArchive()), 'a')).toEqual({
      url: 'pmtiles://a',
      tiles: 'vector',
      encoding: 'mvt',
      layers: [
        { id: 'land', fields: ['name'] },
        { id: 'water', fields: ['name'] },
      ],
      credit: [{ text: 'An invented atlas', href: 'https://example.org/atlas' }],
      close: expect.any(Function) as () => void,
    });
    expect(await openArchive(blob(rasterArchive()), 'b')).toMatchObject({ tiles: 'raster', layers: [] });
  });

  test('[M13] that is none is said to be so', async () => {
    const cut = vectorArchive().subarray(0, 200);
    const newer = Buffer.from(vectorArchive());
    newer[7] = 9;
    for (const bytes of ['', 'x', 'not an archive at all', cut])
      await expect(openArchive(blob(bytes), 'c')).rejects.toThrow(/no PMTiles archive, or a damaged one/);
    await expect(openArchive(blob(newer), 'd')).rejects.toThrow(/newer version/);
  });
});

describe('[M200] archives that answer for the map', () => {
  let before = 0;
  beforeAll(() => void (before = openArchives()));

  test('stay as long as they are shown, and no longer', async () => {
    const [a, b] = [
      await openArchive(blob(vectorArchive()), 'x'),
      await openArchive(blob(rasterArchive()), 'y'),
    ];
    expect(openArchives()).toBe(before + 2);
    a.close();
    expect(openArchives()).toBe(before + 1);
    b.close();
    b.close();
    expect(openArchives()).toBe(before);
  });

  test('that cannot be read do not stay', async () => {
    await expect(openArchive(blob('not an archive at all'), 'z')).rejects.toThrow(/no PMTiles archive/);
    expect(openArchives()).toBe(before);
  });

  test('opened anew under the same name outlive the old one', async () => {
    const old = await openArchive(blob(vectorArchive()), 'same');
    const anew = await openArchive(blob(vectorArchive()), 'same');
    old.close();
    expect(openArchives()).toBe(before + 1);
    anew.close();
    expect(openArchives()).toBe(before);
  });
});

describe('vector tiles without a style', () => {
  const layers = neutralLayers([
    { id: 'roads', fields: ['name'] },
    { id: 'water', fields: [] },
    { id: 'xyz', fields: [] },
  ]);
  test('[M14] are drawn by what their layers are called, areas under lines under points', () => {
    expect(new Set(layers.map((l) => l['source-layer']))).toEqual(new Set(['roads', 'water', 'xyz']));
    const types = layers.map(({ type }) => type);
    expect(types).toEqual([...types].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(layers.filter(({ type }) => type === 'symbol').map(({ id }) => id)).toEqual(['roads-name']);
    expect(new Set(layers.map(({ id }) => id)).size).toBe(layers.length);
  });
  const order = ['fill', 'line', 'circle', 'symbol'];
});

import { describe, expect, test } from 'vitest';
import { styleParts } from '../../../src/map/base/style-parts';

const style = {
  version: 8,
  sprite: 'sprites/day',
  glyphs: '../fonts/{fontstack}/{range}.pbf',
  terrain: { source: 'dem' },
  sources: {
    roads: {
      type: 'vector',
      tiles: ['{z}/{x}/{y}.mvt'],
      attribution: '<a href="https://a.example.org">A</a>',
    },
    shape: { type: 'geojson', data: './shape.json' },
    film: { type: 'video', urls: ['film.mp4'] },
  },
  layers: [
    { id: 'page', type: 'background', paint: {} },
    { id: 'road', type: 'line', source: 'roads', 'source-layer': 'road' },
    { id: 'film', type: 'raster', source: 'film' },
    { id: 'nothing', type: 'line', source: 'roads of nobody' },
    { type: 'line', source: 'roads' },
  ],
};

describe('a style of somebody else under the survey', () => {
  test('[M8] gets names that cannot be the survey’s, and addresses relative to its own', () => {
    const parts = styleParts(style, 'https://maps.example.org/styles/paper/style.json?k=1');
    expect(parts.sources).toEqual({
      'base:roads': {
        type: 'vector',
        tiles: ['https://maps.example.org/styles/paper/{z}/{x}/{y}.mvt'],
        attribution: '<a href="https://a.example.org">A</a>',
      },
      'base:shape': { type: 'geojson', data: 'https://maps.example.org/styles/paper/shape.json' },
    });
    expect(parts.layers.map(({ id, source }) => [id, source])).toEqual([
      ['base:page', undefined],
      ['base:road', 'base:roads'],
    ]);
    expect(parts.glyphs).toBe('https://maps.example.org/styles/fonts/{fontstack}/{range}.pbf');
    expect(parts.sprites).toEqual([
      { id: 'default', url: 'https://maps.example.org/styles/paper/sprites/day' },
    ]);
    expect(parts.credit).toEqual([{ text: 'A', href: 'https://a.example.org' }]);
  });

  test.each([
    null,
    7,
    [],
    {},
    { ...style, version: 7 },
    { ...style, layers: {} },
    { ...style, sources: null },
  ])('[M8] %j is none', (value) =>
    expect(() => styleParts(value, 'https://x.example.org/')).toThrow(/no map style of version 8/),
  );
  test('[M8] without anything to draw is said to be so', () => {
    expect(() => styleParts({ ...style, layers: [] }, 'https://x.example.org/')).toThrow(/no layers/);
  });
});

import { expect, test } from 'vitest';
import { frequencyPatch } from '../../../src/ui/feature/frequencies';
import { verticesOf } from '../../../src/ui/feature/vertex-list';

test('a runway has its two ends, other lines have points', () => {
  const line = {
    type: 'LineString',
    coordinates: [
      [8, 47],
      [9, 46],
    ],
  } as const;
  expect(verticesOf(line, ['End 09', 'End 27']).map((v) => v.label)).toEqual(['End 09', 'End 27']);
  expect(verticesOf(line, null)[1]).toEqual({
    ref: { ring: 0, index: 1 },
    position: [9, 46],
    label: 'Point 2',
  });
});

test('a ring has each corner once, holes say so', () => {
  const polygon = {
    type: 'Polygon',
    coordinates: [
      [
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
        [0, 0],
      ],
      [
        [2, 2],
        [2, 3],
        [3, 3],
        [2, 2],
      ],
    ],
  } as const;
  const vertices = verticesOf(polygon, null);
  expect(vertices.map((v) => v.label)).toEqual([
    'Corner 1',
    'Corner 2',
    'Corner 3',
    'Corner 4',
    'Hole 1, corner 1',
    'Hole 1, corner 2',
    'Hole 1, corner 3',
  ]);
  expect(vertices[5]).toMatchObject({ ref: { ring: 1, index: 1 }, position: [2, 3] });
});

test('frequencies are written without empty names, and not at all when none is left', () => {
  expect(
    frequencyPatch([
      { use: 'Tower', mhz: 118.5, name: null },
      { use: 'Ground', name: 'West', mhz: 121.9 },
    ]),
  ).toEqual({
    frequencies: [
      { use: 'Tower', mhz: 118.5 },
      { use: 'Ground', name: 'West', mhz: 121.9 },
    ],
  });
  expect(frequencyPatch([])).toEqual({ frequencies: undefined });
});

import { expect, test } from 'vitest';
import { edgePointer } from '../../../src/ui/places/edge-pointer';

const map = { width: 600, height: 400 };

test('[B1061] a place off the map has a pointer on the edge that is nearer on the way to it', () => {
  // 600 to the right and 100 down of the middle: the right edge comes first.
  expect(edgePointer({ x: 900, y: 300 }, map, 20)).toMatchObject({ x: 580, y: 200 + (280 / 600) * 100 });
  expect(edgePointer({ x: 900, y: 300 }, map, 20)?.turn).toBeCloseTo(9.46, 2);
  expect(edgePointer({ x: 300, y: -50 }, map, 20)).toMatchObject({ x: 300, y: 20, turn: -90 });
});

test('[B1061] a place on the map has none, and a map with no room keeps it in its middle', () => {
  expect(edgePointer({ x: 600, y: 0 }, map, 20)).toBeNull();
  expect(edgePointer({ x: 99, y: 5 }, { width: 30, height: 30 }, 20)).toMatchObject({ x: 15, y: 15 });
});

test('[B1061] it stands beside the buttons of the map and over its credit, not on them', () => {
  const keys = { x: 550, y: 10, width: 40, height: 300 };
  const credit = { x: 300, y: 370, width: 290, height: 20 };
  expect(edgePointer({ x: 900, y: 200 }, map, 20, [keys, credit])).toMatchObject({ x: 530, y: 200 });
  expect(edgePointer({ x: 400, y: 900 }, map, 20, [keys, credit])).toMatchObject({ y: 350 });
});

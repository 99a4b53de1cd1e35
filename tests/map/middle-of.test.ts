import { expect, test } from 'vitest';
import { middleOf } from '../../src/map/middle-of';

test('[U14] the middle of a shape, also across the antimeridian', () => {
  expect(middleOf({ type: 'Point', coordinates: [7, 50] })).toEqual([7, 50]);
  const [lng, lat] = middleOf({
    type: 'LineString',
    coordinates: [
      [179, 10],
      [-177, 14],
    ],
  });
  expect([Math.abs(lng - -179) < 1e-9 || Math.abs(lng - 181) < 1e-9, lat]).toEqual([true, 12]);
  const square = middleOf({
    type: 'Polygon',
    coordinates: [
      [
        [0, 0],
        [2, 0],
        [2, 4],
        [0, 4],
        [0, 0],
      ],
    ],
  });
  expect(square).toEqual([1, 2]);
});

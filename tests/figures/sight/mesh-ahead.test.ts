import { expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { meshAhead } from '../../../src/figures/sight/mesh-ahead';
import { contentsOf, feature } from '../../support/contents';

type Place = readonly [lng: number, lat: number];
const spot: Place = [8.5, 47.4];
/** m east and north of the spot. */
const at = (x: number, y: number): Place =>
  destination(destination(spot, x < 0 ? 270 : 90, Math.abs(x)), y < 0 ? 180 : 0, Math.abs(y));

function ahead(type: 'LineString' | 'Polygon', coordinates: unknown) {
  const [fence] = contentsOf([
    feature('fence', 'obstacle', type, coordinates, { height: 2.5, sight: 'mesh' }),
  ]).obstacles;
  if (!fence) throw new Error('expected a fence');
  return meshAhead(spot, fence);
}

test('[F144] a mesh fence is as far as its nearest point, and beside the spot within 5 m', () => {
  const along = ahead('LineString', [at(-200, 34), at(300, 34)]);
  expect(along.distance).toBeCloseTo(34, 1);
  expect(along.beside).toBe(false);
  // Past its end the end counts.
  expect(ahead('LineString', [at(30, 40), at(300, 40)]).distance).toBeCloseTo(50, 1);
  expect(ahead('LineString', [at(-200, -3), at(300, -3)])).toMatchObject({ id: 'fence', beside: true });
});

test('[F144] of a cage one looks out through its nearest side', () => {
  const cage = [at(-10, -4), at(10, -4), at(10, 20), at(-10, 20), at(-10, -4)];
  expect(ahead('Polygon', [cage]).distance).toBeCloseTo(4, 1);
});

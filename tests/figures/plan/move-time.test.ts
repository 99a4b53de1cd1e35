import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { estimatedMove } from '../../../src/figures/plan/move-time';
import { contentsOf, runwayFeature } from '../../support/contents';

const a = [8.5, 47.4] as const;
const { runways } = contentsOf([
  runwayFeature('rwy', a, destination(a, 90, 2000), [{ designator: '09' }, { designator: '27' }]),
]);
const at = (east: number, north: number) =>
  destination(destination(a, 90, east), north < 0 ? 180 : 0, Math.abs(north));

describe('the way between two spots, estimated', () => {
  test('[F270] on foot at 1.25 m/s, a third longer than the straight line', () => {
    // 600 m x 1.3 / 1.25 m/s = 624 s.
    expect(estimatedMove(at(200, 300), at(800, 300), runways)).toEqual({
      minutes: 10,
      by: 'foot',
      metres: 780,
    });
    expect(estimatedMove(at(200, 300), at(200, 301), runways)).toMatchObject({ minutes: 1, by: 'foot' });
  });

  test('[F271] never across a runway: round its nearer end, and by car when that is far', () => {
    // Straight across 400 m; round the west end at -400: 2 x hypot(700, 200) = 1456 m, x 1.3 = 1893 m at 9 m/s + 8 min.
    expect(estimatedMove(at(300, 200), at(300, -200), runways)).toEqual({
      minutes: 12,
      by: 'car',
      metres: 1890,
    });
    // Round the east end it is as far from the other side.
    expect(estimatedMove(at(1700, 200), at(1700, -200), runways)).toMatchObject({ minutes: 12, by: 'car' });
    // Past the end nothing is in the way.
    expect(estimatedMove(at(-500, 200), at(-500, -200), runways)).toMatchObject({ minutes: 7, by: 'foot' });
  });

  test('[F272] is the same both ways', () => {
    const [x, y] = [at(100, 250), at(1500, -300)];
    expect(estimatedMove(x, y, runways)).toEqual(estimatedMove(y, x, runways));
  });
});

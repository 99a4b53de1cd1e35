import { describe, expect, test } from 'vitest';
import { keptInSight } from '../../src/map/kept-in-sight';

const whole = { width: 800, height: 600 };
/** A view at the foot takes the lower half; the middle of what was shown stays the middle. */
const half = { width: 800, height: 300 };
/** Where a place that was at `y` of the whole map is on the half one. */
const now = (x: number, y: number) => ({ x, y: y - 150 });

describe('a map that becomes smaller', () => {
  test('[M311] moves until the selected spot is well in sight again, and no further', () => {
    // 560 of 600 px down: now 110 px below the edge, and to be 76 px above it.
    expect(keptInSight(now(400, 560), whole, half)).toEqual({ right: 0, down: 410 - 224 });
    expect(keptInSight(now(400, 20), whole, half)).toEqual({ right: 0, down: -130 - 76 });
  });
  test('[M312] leaves a spot that is well in sight, and who has looked elsewhere, alone', () => {
    expect(keptInSight(now(400, 300), whole, half)).toBeNull();
    expect(keptInSight(now(400, 700), whole, half)).toBeNull();
    expect(keptInSight(now(-40, 300), whole, half)).toBeNull();
  });
  test('[M313] on a map of a few lines the spot comes to its middle third', () => {
    const low = { width: 360, height: 90 };
    const moved = keptInSight({ x: 180, y: 100 }, { width: 360, height: 300 }, low);
    expect(moved).toEqual({ right: 0, down: 40 });
  });
});

import { describe, expect, test } from 'vitest';
import { nearestWall, nearPlane } from '../../src/viewfinder/near-plane';

const ground = { points: [[0, 0, -2]], spokes: 0 } as Parameters<typeof nearPlane>[2];

describe('from where on the picture is drawn', () => {
  test('[F1105] the nearest wall is the nearest part of it, not its nearest corner', () => {
    expect(
      nearestWall([
        {
          foot: [
            [-50, 6, 0],
            [50, 6, 0],
          ],
        },
      ]),
    ).toBeCloseTo(6, 9);
    expect(nearestWall([])).toBe(Infinity);
  });

  test('[F1106] nothing in the frame is cut off: neither a wall nor the grass at its lower edge', () => {
    expect(nearPlane(1200, Infinity, ground, -0.2)).toBe(150);
    expect(nearPlane(1200, 6, ground, -0.2)).toBe(3);
    // 20 degrees down the grass is 5.8 m away.
    expect(nearPlane(1200, Infinity, ground, (20 * Math.PI) / 180)).toBeLessThan(3);
    expect(nearPlane(0, 0, ground, 1.5)).toBe(0.3);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelPlaces, type Box } from '../../../src/exports/sheet/label-places';

const sheet: Box = { x: 0, y: 0, width: 1000, height: 600 };
const name = (x: number, y: number, text: string, needed = false) => ({
  x,
  y,
  text,
  size: 30,
  gap: 20,
  needed,
});
const apart = (a: Box, b: Box) =>
  a.x >= b.x + b.width || b.x >= a.x + a.width || a.y >= b.y + b.height || b.y >= a.y + a.height;

describe('names on a map', () => {
  it('[E102] lie to the right where there is room, to the left at the right edge', () => {
    const [right, left] = labelPlaces([name(100, 300, 'Lane'), name(980, 300, 'Lane')], [], sheet);
    expect(right?.box.x).toBe(120);
    expect((left?.box.x ?? 0) + (left?.box.width ?? 0)).toBe(960);
  });

  it('[E103] never touch one another, what was there, or the edge, however many there are', () => {
    const place = fc.record({ x: fc.integer({ min: 0, max: 1000 }), y: fc.integer({ min: 0, max: 600 }) });
    fc.assert(
      fc.property(fc.array(place, { maxLength: 40 }), (places) => {
        const taken: Box[] = [{ x: 400, y: 200, width: 200, height: 200 }];
        const placed = labelPlaces(
          places.map(({ x, y }) => name(x, y, 'Mill Lane lay-by')),
          taken,
          sheet,
        );
        const boxes = [...taken, ...placed.map(({ box }) => box)];
        boxes.forEach((a, i) => boxes.slice(i + 1).forEach((b) => expect(apart(a, b)).toBe(true)));
        for (const { box } of placed) {
          expect(box.x).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(1000);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('[E104] a name that is needed is there in any crowd', () => {
    const crowd = Array.from({ length: 12 }, (_, i) => name(500, 300, `Spot ${i}`, true));
    expect(labelPlaces(crowd, [], sheet)).toHaveLength(12);
  });
});

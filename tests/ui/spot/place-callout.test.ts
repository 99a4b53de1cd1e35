import { expect, it } from 'vitest';
import { placeCallout, type Point } from '../../../src/ui/spot/place-callout';

const callout = { width: 220, height: 120 };
const map = { width: 900, height: 600 };
const at = (x: number, y: number) => placeCallout({ x, y }, callout, map, 40);

/** Whether the callout leaves the disc round the spot free. */
function leavesFree(spot: Point, corner: Point | null): boolean {
  if (!corner) return false;
  const dx = Math.max(corner.x - spot.x, 0, spot.x - (corner.x + callout.width));
  const dy = Math.max(corner.y - spot.y, 0, spot.y - (corner.y + callout.height));
  return Math.hypot(dx, dy) >= 40;
}

it('stands to the right of the spot, level with it', () => {
  expect(at(300, 250)).toEqual({ x: 340, y: 190 });
});

it('goes to the left where the right has no room', () => {
  expect(at(800, 250)).toEqual({ x: 540, y: 190 });
});

it('is pushed inside at the upper and lower edge', () => {
  expect(at(300, 3)).toEqual({ x: 340, y: 8 });
  expect(at(300, 598)).toEqual({ x: 340, y: 472 });
});

it('goes above or below on a narrow map', () => {
  const narrow = { width: 360, height: 600 };
  expect(placeCallout({ x: 170, y: 400 }, callout, narrow, 40)).toEqual({ x: 60, y: 240 });
  expect(placeCallout({ x: 170, y: 90 }, callout, narrow, 40)).toEqual({ x: 60, y: 130 });
});

it('never covers the spot, wherever that is', () => {
  for (let x = 0; x <= map.width; x += 37)
    for (let y = 0; y <= map.height; y += 23) expect(leavesFree({ x, y }, at(x, y))).toBe(true);
});

it('is not shown for a spot off the map, or where it has no room', () => {
  expect(at(-1, 300)).toBeNull();
  expect(at(300, 601)).toBeNull();
  expect(placeCallout({ x: 50, y: 50 }, callout, { width: 200, height: 600 }, 40)).toBeNull();
});

import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/ui/box-of';
import { leaderTo, placeCallout, type Point } from '../../../src/ui/spot/place-callout';

const callout = { width: 220, height: 120 };
const map = { width: 900, height: 600 };
const buttons = { x: 844, y: 12, width: 44, height: 196 };
const at = (x: number, y: number, bearings: readonly number[] = [], way: readonly Box[] = [buttons]) =>
  placeCallout({ x, y }, callout, map, bearings, way);

/** px from the spot to the callout; less than nothing to speak of when it is covered. */
function distance(spot: Point, corner: Point | null): number {
  if (!corner) return 0;
  const dx = Math.max(corner.x - spot.x, 0, spot.x - (corner.x + callout.width));
  const dy = Math.max(corner.y - spot.y, 0, spot.y - (corner.y + callout.height));
  return Math.hypot(dx, dy);
}

describe('a callout', () => {
  it('stands to the right of its spot, level with it', () => {
    expect(at(300, 250)).toEqual({ x: 356, y: 190 });
  });
  it('[U10] leaves the buttons at the upper right corner free: goes below them, or to another side', () => {
    expect(at(600, 150)).toEqual({ x: 324, y: 90 });
    // Looking west as well, the east is as good: below the buttons.
    expect(at(600, 150, [270, 180, 225, 0, 315])).toEqual({ x: 656, y: 208 });
    for (let x = 0; x <= map.width - 300; x += 31)
      for (let y = 0; y <= map.height; y += 29) {
        const corner = at(x, y);
        if (corner) expect(corner.x + callout.width <= buttons.x || corner.y >= 208, `${x} ${y}`).toBe(true);
      }
  });
  it('goes to the left where the right has no room', () => {
    expect(at(800, 250)).toEqual({ x: 524, y: 190 });
  });
  it('is pushed inside at the upper and lower edge', () => {
    expect(at(300, 3)).toEqual({ x: 356, y: 8 });
    expect(at(300, 598)).toEqual({ x: 356, y: 472 });
  });
  it('goes below or above on a narrow map', () => {
    const narrow = { width: 360, height: 600 };
    expect(placeCallout({ x: 170, y: 90 }, callout, narrow, [], [])).toEqual({ x: 60, y: 146 });
    expect(placeCallout({ x: 170, y: 500 }, callout, narrow, [], [])).toEqual({ x: 60, y: 324 });
  });
  it('never covers the spot, wherever that is', () => {
    for (let x = 0; x <= map.width; x += 37)
      for (let y = 0; y <= map.height; y += 23)
        expect(distance({ x, y }, at(x, y, [80, 130]))).toBeGreaterThanOrEqual(56);
  });
  it('[B1066] is not there over a low map, but while its spot is dragged', () => {
    const low = { width: 640, height: 290 };
    const on = (size: typeof low, dragged: boolean) =>
      placeCallout({ x: 300, y: 140 }, callout, size, [], [], [], dragged);
    expect(on(low, false)).toBeNull();
    expect(on(low, true)).not.toBeNull();
    expect(on({ ...low, height: 310 }, false)).not.toBeNull();
  });
  it('[U961] hides no legend, wherever the spot is: it goes beside, below, or off a corner', () => {
    const legend = { x: 12, y: 12, width: 225, height: 330 };
    for (let x = 0; x <= map.width; x += 31)
      for (let y = 0; y <= map.height; y += 29) {
        const corner = at(x, y, [80, 130, 200], [buttons, legend]);
        if (!corner) continue;
        const over = corner.x < legend.x + legend.width && corner.y < legend.y + legend.height;
        expect(over, `${x} ${y}`).toBe(false);
        expect(distance({ x, y }, corner)).toBeGreaterThanOrEqual(56);
      }
  });
  it('[U962] where a legend leaves no place on a small map, it covers as little of it as can be, and never the spot', () => {
    const small = { width: 460, height: 300 };
    const legend = { x: 12, y: 12, width: 225, height: 230 };
    const spot = { x: 150, y: 150 };
    const corner = placeCallout(spot, callout, small, [], [legend]);
    expect(corner).not.toBeNull();
    expect(distance(spot, corner)).toBeGreaterThanOrEqual(56);
  });
  it('[U964] rather hides nothing of other spots, where it looks at as little there', () => {
    const others = [{ x: 400, y: 250 }];
    expect(placeCallout({ x: 300, y: 250 }, callout, map, [], [], others)).toEqual({ x: 24, y: 190 });
    // Where it looks it does not go for that.
    const west = [265, 270, 275, 0, 315, 225, 180];
    expect(placeCallout({ x: 300, y: 250 }, callout, map, west, [], others)).toEqual({ x: 356, y: 190 });
  });
  it('[U963] a leader goes from the spot to the nearest place of its edge', () => {
    const box = { x: 100, y: 50, width: 80, height: 40 };
    expect(leaderTo({ x: 20, y: 70 }, box)).toEqual({ x: 100, y: 70 });
    expect(leaderTo({ x: 220, y: 130 }, box)).toEqual({ x: 180, y: 90 });
  });
  it('is not shown for a spot off the map, or where it has no room', () => {
    expect(at(-1, 300)).toBeNull();
    expect(at(300, 601)).toBeNull();
    expect(placeCallout({ x: 50, y: 50 }, callout, { width: 200, height: 600 }, [], [])).toBeNull();
  });
});

describe('what the spot looks at', () => {
  it('is left free: to the east and north of here, so the callout goes west', () => {
    expect(at(450, 300, [70, 95, 10])).toEqual({ x: 174, y: 240 });
  });
  it('is covered least where something must be, and then behind the rings', () => {
    const everywhere = [95, 90, 200, 190, 280, 355];
    expect(at(450, 300, everywhere)).toEqual({ x: 142, y: 240 });
  });
  it('counts across north', () => {
    const northAndEastAlike = [350, 10, 90, 91, 180, 181, 182, 270, 271, 272];
    expect(at(450, 300, northAndEastAlike)).toEqual({ x: 538, y: 240 });
  });
});

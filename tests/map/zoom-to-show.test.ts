import { expect, test } from 'vitest';
import { zoomToShow } from '../../src/map/zoom-to-show';

// Web Mercator (EPSG:3857) of half the world's width: northing pi / 2 is the Gudermannian 66.51326 degrees.
test('[M23] the zoom that shows bounds goes by the tighter side, at any latitude', () => {
  const quarter = [
    [-90, 0],
    [90, 66.51326],
  ] as const;
  // 180 of 360 degrees in 256 px is the world in one tile of 512 px; its northing, a quarter of the world, takes 128 px.
  expect(zoomToShow(quarter, { width: 256, height: 1000 })).toBeCloseTo(0, 5);
  expect(zoomToShow(quarter, { width: 2560, height: 128 })).toBeCloseTo(0, 5);
  expect(zoomToShow(quarter, { width: 2560, height: 256 })).toBeCloseTo(1, 5);
});

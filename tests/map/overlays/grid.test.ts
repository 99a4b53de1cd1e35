import { describe, expect, test } from 'vitest';
import { gridOverlay } from '../../../src/map/overlays/grid';
import { degreesPerPixel } from '../../../src/map/screen';
import type { Bounds } from '../../../src/map/map-surface';

/** What 1200 x 800 pixels show round a place. */
const boundsAt = (lng: number, lat: number, zoom: number): Bounds => {
  const [x, y] = [600 * degreesPerPixel(zoom), 400 * degreesPerPixel(zoom) * 0.64];
  return [
    [lng - x, lat - y],
    [lng + x, lat + y],
  ];
};
const bold = (zoom: number, lng = 7.01, lat = 50.02) =>
  gridOverlay(boundsAt(lng, lat, zoom), zoom).features.filter((f) => f.properties['weight'] === 'bold');

describe('the grid of a survey without a plan', () => {
  test.each([3, 6, 9, 12, 15, 18, 20])('has some lines, and not too many, at zoom %s', (zoom) => {
    const { features } = gridOverlay(boundsAt(7.01, 50.02, zoom), zoom);
    expect(features.length).toBeGreaterThan(6);
    expect(features.length).toBeLessThan(160);
    expect(bold(zoom).length).toBeGreaterThan(1);
  });

  test('is labelled in degrees, minutes and seconds', () => {
    const labels = bold(14).map((f) => f.properties['label']);
    expect(labels).toContain('7°01′ E');
    expect(labels).toContain('50°01′ N');
    expect(bold(14, -7.01, -50.02).map((f) => f.properties['label'])).toContain('7°01′ W');
    expect(bold(14, -7.01, -50.02).map((f) => f.properties['label'])).toContain('50°01′ S');
  });

  test('counts on over the antimeridian', () => {
    const labels = bold(12, 179.99, -16).map((f) => f.properties['label']);
    expect(labels).toContain('179°55′ E');
    expect(labels).toContain('179°55′ W');
  });

  test('[M1] draws parallels over more than half the world the way the map looks, not the shorter one', () => {
    const [west, east] = [-52, 86];
    const { features } = gridOverlay(
      [
        [west, -15],
        [east, 76],
      ],
      2,
    );
    const parallel = features.find((f) => f.properties['label'] === '30° N');
    const lngs = (parallel?.geometry.coordinates as [number, number][]).map(([lng]) => lng);
    expect(Math.min(...lngs)).toBeLessThan(west);
    expect(Math.max(...lngs)).toBeGreaterThan(east);
    expect(lngs).toEqual([...lngs].sort((a, b) => a - b));
  });
});

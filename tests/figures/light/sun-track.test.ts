import { describe, expect, test } from 'vitest';
import { sunAt } from '../../../src/figures/light/sun';
import { SunTrack } from '../../../src/figures/light/sun-track';
import { angleBetween, RAD } from '../../../src/figures/geometry/angles';

describe('the sun at many instants', () => {
  test.each([
    ['Tolverby', [18.1734, 50.9287]],
    ['70 degrees north', [18.91, 69.68]],
    ['the southern half', [-58.5358, -34.8222]],
    ['the equator', [-78.3575, -0.1292]],
    ['the date line', [179.99, -16.5]],
    ['the pole', [0, 90]],
  ] as const)('[F240] is that of one instant within 0.001 degrees over %s', (_, place) => {
    const track = new SunTrack(place);
    let [worstAltitude, worstAzimuth] = [0, 0];
    for (let i = 0; i < 2000; i++) {
      // Every 4 h 23 min 20 s over a year: no hour is met twice in the same season.
      const instant = Date.parse('2026-01-01T00:00:00Z') + i * 15_800_000;
      const one = sunAt(place, instant);
      const many = track.at(instant).sun;
      worstAltitude = Math.max(worstAltitude, Math.abs(one.geometricAltitude - many.geometricAltitude));
      worstAltitude = Math.max(worstAltitude, Math.abs(one.altitude - many.altitude));
      const off = angleBetween(one.azimuth, many.azimuth) * Math.cos(one.geometricAltitude * RAD);
      worstAzimuth = Math.max(worstAzimuth, off);
    }
    expect(worstAltitude).toBeLessThan(0.001);
    expect(worstAzimuth).toBeLessThan(0.001);
  });

  test('[F240] points where it says', () => {
    const there = new SunTrack([8.5, 47.4]).at(Date.parse('2026-05-03T06:40:00Z'));
    const level = Math.cos(there.sun.altitude * RAD);
    expect(there.east).toBeCloseTo(level * Math.sin(there.sun.azimuth * RAD), 12);
    expect(there.north).toBeCloseTo(level * Math.cos(there.sun.azimuth * RAD), 12);
    expect(there.up).toBeCloseTo(Math.sin(there.sun.altitude * RAD), 12);
    expect(Math.hypot(there.levelEast, there.levelNorth)).toBeCloseTo(1, 12);
  });
});

import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, plainSubject, runwayFeature } from '../../support/contents';
import { pathNamed, placeAt, placesOf } from '../../support/flown';

const a = [151.17, -33.93] as const;
const azimuth = 334.9;
const length = 2130;
const b = destination(a, azimuth, length);
const halfHeight = plainSubject.height / 2;

function departure(designator: string, subject: Record<string, unknown> = {}) {
  const contents = contentsOf(
    [
      runwayFeature('rwy', a, b, [
        { designator: '33', elevation: 6, displaced: 400 },
        { designator: '15', elevation: 21 },
      ]),
    ],
    { subjects: [{ ...plainSubject, ...subject }] },
  );
  const runway = contents.runways[0];
  if (!runway) throw new Error('expected a runway');
  return placesOf(pathNamed(contents, `rwy/${designator}/departure`), runway);
}

describe('departures', () => {
  test('[F20] begin at the pavement end, whatever is displaced, and end 6 km past the far end', () => {
    const places = departure('33');
    expect(places[0]).toMatchObject({ station: 0 });
    expect(places[0]?.along).toBeCloseTo(0, 3);
    expect(places[0]?.elevation).toBeCloseTo(6 + halfHeight, 4);
    expect(places.at(-1)?.station).toBeCloseTo(length + 6000, 3);
    expect(places.at(-1)?.along).toBeCloseTo(length + 6000, 1);
    expect(places.slice(0, -1).map((p) => p.station)).toEqual(
      Array.from({ length: places.length - 1 }, (_, i) => 20 * i),
    );
  });

  test('[F21] ground run along the pavement, then the climb gradient; nose 8 degrees up after lift-off', () => {
    const places = departure('33');
    const pavement = (t: number) => 6 + (15 / length) * t;
    for (const p of places) {
      const airborne = p.station > 1500;
      const wheels = airborne ? pavement(1500) + 0.12 * (p.station - 1500) : pavement(p.station);
      expect(p.elevation, `at ${p.station}`).toBeCloseTo(wheels + halfHeight, 1);
      expect(p.attitude).toBeCloseTo(airborne ? 8 : 0, 9);
      expect(p.height).toBeCloseTo(wheels + halfHeight - 6, 6);
      expect(p.climb).toBeCloseTo(airborne ? 6.8428 : 0.4035, 3);
    }
  });

  test('[F22] lifts off at the far end when the runway is too short', () => {
    const places = departure('33', { groundRun: 4000 });
    expect(placeAt(places, 2120).climb).toBeLessThan(1);
    expect(placeAt(places, 2140).climb).toBeGreaterThan(6);
    expect(placeAt(places, 3140).elevation).toBeCloseTo(21 + 0.12 * 1010 + halfHeight, 1);
  });

  test('[F23] constant acceleration from standstill to climb speed', () => {
    const places = departure('33');
    expect(places[0]?.speed).toBe(0);
    expect(placeAt(places, 380).speed).toBeCloseTo(80 * Math.sqrt(380 / 1500), 9);
    expect(placeAt(places, 1500).speed).toBeCloseTo(80, 9);
    expect(placeAt(places, 5000).speed).toBe(80);
    // A helicopter that needs no run is at climb speed at once.
    expect(departure('33', { groundRun: 0 })[0]?.speed).toBe(80);
  });

  test('[F24] of the other end: downhill, the other way, with its own attitude', () => {
    const places = departure('15', { climbAttitude: -5 });
    expect(places[0]?.along).toBeCloseTo(length, 2);
    expect(places[0]?.track).toBeCloseTo(azimuth - 180, 1);
    expect(places[0]?.elevation).toBeCloseTo(21 + halfHeight, 4);
    const climbing = placeAt(places, 3000);
    expect(climbing.attitude).toBeCloseTo(-5, 9);
    expect(climbing.elevation).toBeCloseTo(21 - (15 / length) * 1500 + 0.12 * 1500 + halfHeight, 1);
    expect(climbing.height).toBeCloseTo(climbing.elevation - 21, 1);
  });
});

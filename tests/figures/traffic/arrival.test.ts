import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import type { Contents } from '../../../src/survey/contents';
import { contentsOf, plainSubject, runwayFeature } from '../../support/contents';
import { pathNamed, placeAt, placesOf } from '../../support/flown';

const a = [13.1, 47.8] as const;
const azimuth = 157.3;
const length = 2400;
const b = destination(a, azimuth, length);

/** 430 m at end 16, 442 m at end 34: it rises by 0.5 % towards the south. */
function field(end: Record<string, unknown> = {}, subject: Record<string, unknown> = {}): Contents {
  return contentsOf(
    [
      runwayFeature('rwy', a, b, [
        { designator: '16', elevation: 430, displaced: 300, glide: 3.4, crossingHeight: 12, ...end },
        { designator: '34', elevation: 442 },
      ]),
    ],
    { subjects: [{ ...plainSubject, ...subject }] },
  );
}

function arrival(contents: Contents, designator = '16') {
  const runway = contents.runways[0];
  if (!runway) throw new Error('expected a runway');
  return placesOf(pathNamed(contents, `rwy/${designator}/arrival`), runway);
}

const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
const halfHeight = plainSubject.height / 2;
/** The pavement under the displaced threshold. */
const threshold = 430 + (12 / length) * 300;

describe('arrivals', () => {
  test('[F10] stations are multiples of 20 m with both ends, from 10 km out to the end of the roll-out', () => {
    const stations = arrival(field()).map((p) => p.station);
    expect(stations[0]).toBe(10_000);
    const last = stations.at(-1) ?? NaN;
    // Contact where the glide line meets the rising pavement, then 900 m of landing run.
    expect(last).toBeCloseTo(-(12 / (tan(3.4) + 12 / length)) - 900, 6);
    expect(stations.slice(0, -1).every((s) => s % 20 === 0)).toBe(true);
    expect(new Set(stations).size).toBe(stations.length);
    expect(stations.every((s, i) => i === 0 || s < (stations[i - 1] ?? NaN))).toBe(true);
    expect(stations).toHaveLength(10_000 / 20 + 1 + Math.ceil(-last / 20));
  });

  test('[F11] station 0 is the displaced threshold; the wheels cross it at the crossing height', () => {
    const places = arrival(field());
    const over = placeAt(places, 0);
    expect(over.along).toBeCloseTo(300, 2);
    expect(over.offset).toBeCloseTo(0, 2);
    expect(over.elevation).toBeCloseTo(threshold + 12 + halfHeight, 3);
    expect(over.height).toBeCloseTo(12 + halfHeight, 6);
    expect(over.track).toBeCloseTo(azimuth, 2);
    const out = placeAt(places, 6000);
    expect(out.along).toBeCloseTo(-5700, 1);
    // Above mean sea level: the path itself does not bend with the earth.
    expect(out.elevation).toBeCloseTo(threshold + 12 + 6000 * tan(3.4) + halfHeight, 2);
    expect(out.height).toBeCloseTo(out.elevation - threshold, 2);
  });

  test('[F12] in the air nose up and sinking; on the ground level along the pavement', () => {
    const places = arrival(field());
    const contact = 12 / (tan(3.4) + 12 / length);
    for (const p of places) {
      const airborne = p.station > -contact;
      expect(p.attitude, `attitude at ${p.station}`).toBeCloseTo(airborne ? 3 : 0, 9);
      expect(p.climb, `climb at ${p.station}`).toBeCloseTo(airborne ? -3.4 : 0.28648, 3);
      if (!airborne) expect(p.elevation).toBeCloseTo(430 + (12 / length) * p.along + halfHeight, 2);
    }
  });

  test('[F13] the roll-out ends with the runway', () => {
    const last = arrival(field({}, { landingRun: 5000 })).at(-1);
    expect(last?.station).toBeCloseTo(-2100, 6);
    expect(last?.along).toBeCloseTo(length, 2);
    expect(last?.elevation).toBeCloseTo(442 + halfHeight, 3);
  });

  test('[F14] approach speed in the air, then constant deceleration to 7 m/s', () => {
    const places = arrival(field());
    const contact = -12 / (tan(3.4) + 12 / length);
    expect(placeAt(places, 4000).speed).toBe(70);
    expect(places.at(-1)?.speed).toBeCloseTo(7, 9);
    const rolling = places.filter((p) => p.station < contact);
    // v^2 falls evenly with the way rolled.
    for (const p of rolling)
      expect(p.speed ** 2).toBeCloseTo(70 ** 2 + (7 ** 2 - 70 ** 2) * ((contact - p.station) / 900), 6);
    expect(rolling.length).toBeGreaterThan(40);
  });

  test("[F15] the subject's own approach angle, crossing height and attitude go before the end's", () => {
    const own = { approachAngle: 5.5, crossingHeight: 20, approachAttitude: -1.5 };
    const places = arrival(field({}, own));
    const out = placeAt(places, 2000);
    expect(out.elevation).toBeCloseTo(threshold + 20 + 2000 * tan(5.5) + halfHeight, 2);
    expect(out.attitude).toBeCloseTo(-1.5, 9);
    expect(out.climb).toBeCloseTo(-5.5, 9);
  });

  test('[F16] without a word from end or subject: 3 degrees, 50 ft, no displacement, level ground', () => {
    const contents = contentsOf([runwayFeature('rwy', a, b, [{ designator: '16' }, { designator: '34' }])], {
      site: { elevation: 77 },
      subjects: [plainSubject],
    });
    const places = arrival(contents);
    expect(placeAt(places, 0).along).toBeCloseTo(0, 6);
    expect(placeAt(places, 1000).elevation).toBeCloseTo(77 + 15.24 + 1000 * tan(3) + halfHeight, 3);
  });

  test('[F17] the other end lands the other way, from its own threshold', () => {
    const places = arrival(field(), '34');
    const over = placeAt(places, 0);
    expect(over.along).toBeCloseTo(length, 2);
    expect(over.track).toBeCloseTo(azimuth + 180, 1);
    expect(over.elevation).toBeCloseTo(442 + 15.24 + halfHeight, 3);
    expect(placeAt(places, 3000).along).toBeCloseTo(length + 3000, 1);
    // Downhill the glide line meets the pavement later.
    const contact = 15.24 / (tan(3) - 12 / length);
    expect(places.at(-1)?.station).toBeCloseTo(-contact - 900, 6);
  });

  test('[F18] a glide line that never meets the pavement ends with the runway', () => {
    // From end 34 the runway falls by 4 %, more steeply than a glide of 2 degrees.
    const contents = contentsOf(
      [
        runwayFeature('rwy', a, b, [
          { designator: '16', elevation: 400 },
          { designator: '34', elevation: 496, glide: 2 },
        ]),
      ],
      { subjects: [plainSubject] },
    );
    const last = arrival(contents, '34').at(-1);
    expect(last?.station).toBeCloseTo(-length, 6);
    expect(last?.along).toBeCloseTo(0, 2);
  });

  test('[F19] a threshold displaced beyond the runway is held at its far end', () => {
    const places = arrival(field({ displaced: 3000 }));
    expect(places.at(-1)?.station).toBeCloseTo(0, 9);
    expect(places.at(-1)?.along).toBeCloseTo(length, 2);
    expect(places.every((p) => Number.isFinite(p.elevation) && Number.isFinite(p.speed))).toBe(true);
  });
});

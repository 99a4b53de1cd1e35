import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, plainSubject, runwayFeature } from '../../support/contents';
import { pathNamed, placeAt, placesOf, type Place } from '../../support/flown';

const foot = 0.3048;
const abeam = 0.75 * 1852;
const a = [-3.4, 56.2] as const;
const azimuth = 71.5;
const length = 1300;
const b = destination(a, azimuth, length);
const displaced = 90;

const light = {
  ...plainSubject,
  propulsion: 'propeller',
  height: 3,
  approachSpeed: 33,
  climbSpeed: 39,
  groundRun: 320,
  landingRun: 250,
  climbGradient: 0.11,
};

function circuit(circuitSide: 'left' | 'right', subject: Record<string, unknown> = {}, designator = '07') {
  const contents = contentsOf(
    [
      runwayFeature('rwy', a, b, [
        { designator: '07', elevation: 118, displaced, circuit: circuitSide },
        { designator: '25', elevation: 124, circuit: circuitSide },
      ]),
    ],
    { site: { elevation: 121 }, subjects: [{ ...light, ...subject }] },
  );
  const runway = contents.runways[0];
  if (!runway) throw new Error('expected a runway');
  return {
    places: placesOf(pathNamed(contents, `rwy/${designator}/circuit`), runway),
    arrival: placesOf(pathNamed(contents, `rwy/${designator}/arrival`), runway),
  };
}

const wheels = (p: Place, height = light.height) => p.elevation - height / 2;
const track = (from: number) => (azimuth + from + 360) % 360;
/** The leg flown in a direction, degrees from the landing direction. */
const leg = (places: readonly Place[], from: number) =>
  places.filter((p) => Math.abs(((p.track - track(from) + 540) % 360) - 180) < 0.5);

describe('circuits', () => {
  test('[F30] 1000 ft above the field; jets 1500, helicopters 500 (FAA AIM 4-3-3)', () => {
    const top = (subject: Record<string, unknown>, height = light.height) =>
      (Math.max(...circuit('left', subject).places.map((p) => wheels(p, height))) - 121) / foot;
    expect(top({})).toBeCloseTo(1000, 1);
    expect(top({ propulsion: 'none' })).toBeCloseTo(1000, 1);
    expect(top({ propulsion: 'jet' })).toBeCloseTo(1500, 1);
    expect(top({ propulsion: 'rotor' })).toBeCloseTo(500, 1);
  });

  test.each([
    ['left', -1],
    ['right', 1],
  ] as const)('[F31] flown to the %s, downwind 0.75 NM abeam', (side, sign) => {
    const { places } = circuit(side);
    const downwind = leg(places, 180);
    expect(downwind.length).toBeGreaterThan(50);
    // Straight and parallel in the runway's frame; the curved earth is worth some centimetres.
    for (const p of downwind) expect(p.offset).toBeCloseTo(sign * abeam, 0);
    expect(places.every((p) => sign * p.offset > -1)).toBe(true);
    expect(leg(places, -90 * -sign).length).toBeGreaterThan(10);
  });

  test('[F32] the base turn begins where the threshold is 45 degrees behind', () => {
    const { places } = circuit('left');
    const downwind = leg(places, 180);
    // The landing threshold is 90 m along; 45 degrees behind means as far past it as abeam.
    const last = downwind.at(-1);
    expect((last?.along ?? NaN) - (displaced - abeam)).toBeGreaterThanOrEqual(-1);
    expect((last?.along ?? NaN) - (displaced - abeam)).toBeLessThan(25);
  });

  test('[F33] level on the downwind until abeam the threshold, then down all the way', () => {
    const { places } = circuit('left');
    const downwind = leg(places, 180);
    const before = downwind.filter((p) => p.along > displaced + 20);
    expect(before.length).toBeGreaterThan(30);
    const level = before.filter((p) => Math.abs(wheels(p) - (121 + 1000 * foot)) < 0.01);
    // The light single is still climbing when it turns downwind.
    expect(level.length).toBeGreaterThan(10);
    const after = places.slice(places.indexOf(level.at(-1) as Place) + 2);
    const inAir = after.filter((p) => p.station > 0);
    expect(inAir.every((p, i) => i === 0 || p.elevation < (inAir[i - 1] as Place).elevation)).toBe(true);
    expect(inAir[0]?.along).toBeLessThan(displaced + 25);
  });

  test('[F34] final joins the arrival: the same places, heights and roll-out', () => {
    const { places, arrival } = circuit('right');
    const final = places.filter((p) => p.station <= abeam && p.station % 20 === 0);
    expect(final.length).toBeGreaterThan(70);
    for (const p of final) {
      const other = placeAt(arrival, p.station);
      expect(p.along, `at ${p.station}`).toBeCloseTo(other.along, 2);
      expect(p.offset).toBeCloseTo(other.offset, 2);
      expect(p.elevation).toBeCloseTo(other.elevation, 2);
      expect(p.track).toBeCloseTo(other.track, 2);
    }
    expect(places.at(-1)?.station).toBeCloseTo(arrival.at(-1)?.station ?? NaN, 6);
    expect(placeAt(places, 0).height).toBeCloseTo(15.24 + light.height / 2, 6);
  });

  test('[F35] station is the way still to fly: consecutive samples are as far apart as their stations', () => {
    const { places } = circuit('left');
    for (let i = 1; i < places.length; i++) {
      const [p, q] = [places[i - 1] as Place, places[i] as Place];
      const flown = Math.hypot(q.along - p.along, q.offset - p.offset);
      // A chord cuts a corner of 300 m radius by less than a centimetre in 20 m.
      expect(Math.abs(p.station - q.station - flown), `at ${q.station}`).toBeLessThan(0.02);
      // Corners are rounded: no kink of more than a few degrees, no step in height.
      expect(Math.abs(((q.track - p.track + 540) % 360) - 180)).toBeLessThan(6);
      expect(Math.abs(q.elevation - p.elevation)).toBeLessThan(3.5);
    }
  });

  test('[F36] a fast aircraft still fits its turns between the legs', () => {
    const { places } = circuit('left', { propulsion: 'jet', approachSpeed: 120, climbSpeed: 130 });
    const offsets = places.map((p) => p.offset);
    expect(Math.min(...offsets)).toBeCloseTo(-abeam, 0);
    expect(Math.max(...offsets)).toBeLessThan(1);
    expect(places.every((p) => Number.isFinite(p.elevation))).toBe(true);
  });

  test('[F37] a steep approach does not climb to meet its glide path', () => {
    const { places } = circuit('left', { propulsion: 'rotor', approachAngle: 12 });
    expect(Math.max(...places.map((p) => wheels(p)))).toBeLessThanOrEqual(121 + 500 * foot + 0.01);
    const final = places.filter((p) => p.station <= abeam && p.station > 0);
    expect(final.every((p, i) => i === 0 || p.elevation <= (final[i - 1] as Place).elevation + 1e-6)).toBe(
      true,
    );
  });

  test('[F38] of the other end: mirrored along the runway', () => {
    const { places } = circuit('left', {}, '25');
    // Landing towards position 0, left is the right-hand side of the runway's own direction.
    expect(Math.max(...places.map((p) => p.offset))).toBeCloseTo(abeam, 0);
    expect(placeAt(places, 0).along).toBeCloseTo(length, 1);
  });
});

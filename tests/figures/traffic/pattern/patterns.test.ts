import { describe, expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { everyPath } from '../../../../src/figures/traffic/every-path';
import { contentsOf, plainSubject, runwayFeature } from '../../../support/contents';
import { pathNamed, placeAt, placesOf, type Place } from '../../../support/flown';

const a = [-3.4, 56.2] as const;
const azimuth = 71.5;
const length = 2400;
const b = destination(a, azimuth, length);
const displaced = 90;
const foot = 0.3048;

const jet = {
  ...plainSubject,
  propulsion: 'jet',
  length: 15,
  span: 10,
  height: 5,
  approachSpeed: 72,
  climbSpeed: 120,
  groundRun: 600,
  landingRun: 900,
};

function flown(pattern: object, subject: object = {}, tail = '') {
  const runway = runwayFeature('rwy', a, b, [
    { designator: '07', elevation: 118, displaced, circuit: 'left' },
    { designator: '25', elevation: 118 },
  ]);
  const contents = contentsOf(
    [{ ...runway, properties: { ...runway.properties, patterns: [{ end: 0, ...pattern }] } }],
    { site: { elevation: 118 }, subjects: [{ ...jet, ...subject }] },
  );
  const [drawn] = contents.runways;
  if (!drawn) throw new Error('expected a runway');
  const kind = (pattern as { pattern: string }).pattern;
  return placesOf(pathNamed(contents, `rwy/07/${kind}${tail}`), drawn);
}

const wheels = (p: Place) => p.elevation - 118 - jet.height / 2;
/** Degrees from the landing direction. */
const off = (p: Place) => ((p.track - azimuth + 540) % 360) - 180;
/** No aircraft jumps: samples follow each other by their stations, and turn by no more than the tightest turn asks. */
function continuous(places: readonly Place[]) {
  places.slice(1).forEach((p, i) => {
    const q = places[i];
    if (!q) return;
    const way = Math.hypot(p.along - q.along, p.offset - q.offset);
    expect(way).toBeLessThan(Math.abs(p.station - q.station) + 0.05);
    expect(Math.abs(p.elevation - q.elevation)).toBeLessThan(0.6 * way + 0.1);
  });
}

describe('initial and break', () => {
  const places = flown({ pattern: 'break' });
  test('[F1010] run-in at 1,500 ft and 350 kt along the runway, landing on it', () => {
    const [first] = places;
    expect(wheels(first as Place)).toBeCloseTo(1500 * foot, 1);
    expect((first as Place).speed).toBeCloseTo(350 * (1852 / 3600), 1);
    expect(Math.abs(off(first as Place))).toBeLessThan(0.2);
    expect(Math.abs((first as Place).offset)).toBeLessThan(1);
    const last = places.at(-1) as Place;
    expect(Math.abs(last.offset)).toBeLessThan(0.5);
    expect(wheels(last)).toBeCloseTo(0, 1);
    continuous(places);
  });

  test('[F1011] breaks level over the threshold: steeper at its beginning than at its end, 60 degrees at the mean speed', () => {
    const turning = places.filter((p) => p.offset < -200 && Math.abs(wheels(p) - 1500 * foot) < 0.5);
    const banks = turning.map((p) => p.bank).filter((bank) => bank < -5);
    expect(Math.min(...banks)).toBeLessThan(-63);
    expect(Math.max(...banks.filter((x) => x < -20))).toBeGreaterThan(-58);
    // Left turns: the left wing down.
    expect(Math.max(...places.map((p) => p.bank))).toBeLessThan(1);
    const begin = places.findLast((p) => p.speed > 180);
    expect((begin as Place).along).toBeGreaterThan(displaced - 60);
    expect((begin as Place).along).toBeLessThan(displaced + 60);
  });

  test('[F1012] rolls out at least a quarter of a mile from and 300 ft above the threshold (FAA P/CG)', () => {
    const out = places.find((p) => Math.abs(off(p)) < 0.3 && p.station < 4000) as Place;
    expect(out.station).toBeGreaterThan(402);
    expect(wheels(out)).toBeGreaterThan(299 * foot);
  });

  test('[F1013] aircraft of a stream break their interval apart, each farther along', () => {
    const pattern = { pattern: 'break', aircraft: 3, interval: 5 };
    const begins = ['/no1', '/no2', '/no3'].map(
      (tail) => (flown(pattern, {}, tail).findLast((p) => p.speed > 180) as Place).along,
    );
    const apart = 180.06 * 5;
    expect((begins[1] ?? 0) - (begins[0] ?? 0)).toBeCloseTo(apart, -2);
    expect((begins[2] ?? 0) - (begins[1] ?? 0)).toBeCloseTo(apart, -2);
  });

  test('[F1014] stated values go before the usual ones; to the right it banks to the right', () => {
    const other = flown({ pattern: 'break', side: 'right', height: 300, speed: 150 });
    expect(wheels(other[0] as Place)).toBeCloseTo(300, 1);
    expect(Math.max(...other.map((p) => p.bank))).toBeGreaterThan(55);
    expect(Math.max(...other.map((p) => p.offset))).toBeGreaterThan(1000);
  });
});

describe('other circuits and approaches', () => {
  test('[F1015] tankers and airlifters fly wide: 1.5 NM abeam at 1,500 ft, banked 25 degrees', () => {
    const places = flown({ pattern: 'wide-circuit' }, { approachSpeed: 70 });
    expect(Math.min(...places.map((p) => p.offset))).toBeCloseTo(-2778, -1);
    expect(Math.max(...places.map(wheels))).toBeCloseTo(1500 * foot, 1);
    expect(Math.min(...places.map((p) => p.bank))).toBeCloseTo(-25, 0);
    continuous(places);
  });

  test('[F1016] an offset localizer comes in at its angle and meets the centreline where it is said to', () => {
    const places = flown({ pattern: 'offset', side: 'left', offset: 5, meets: 1400 });
    // Meridians converge by an eighth of a degree over 10 km here.
    expect(Math.abs(Math.abs(off(places[0] as Place)) - 5)).toBeLessThan(0.2);
    expect((places[0] as Place).offset).toBeLessThan(-600);
    const near = places.filter((p) => p.station < 1200);
    for (const p of near) expect(Math.abs(p.offset)).toBeLessThan(0.5);
    // 8,000 m before where they meet, 5 degrees are 700 m aside.
    const far = places.find((p) => displaced - p.along > 9300) as Place;
    expect(-far.offset).toBeCloseTo(Math.tan((5 * Math.PI) / 180) * (displaced - far.along - 1400), 0);
    continuous(places);
  });

  test("[F1017] circling begins on the other end's approach and lands on this one", () => {
    const places = flown({ pattern: 'circling' });
    expect(Math.abs(off(places[0] as Place))).toBeCloseTo(180, 0);
    expect((places[0] as Place).along).toBeGreaterThan(length + 4000);
    expect(Math.min(...places.map((p) => p.offset))).toBeCloseTo(-1852, -1);
    const level = places.filter((p) => p.offset < -1500 && p.along > displaced + 100);
    for (const p of level) expect(wheels(p)).toBeCloseTo(200, 0);
    expect(Math.abs(off(places.at(-1) as Place))).toBeLessThan(0.2);
    continuous(places);
  });

  test('[F1018] gliders fly close, and come down twice as steeply; behind a tug they climb shallowly', () => {
    const glider = { propulsion: 'none', approachSpeed: 27, climbSpeed: 27, landingRun: 150 };
    const places = flown({ pattern: 'glider' }, glider);
    expect(Math.min(...places.map((p) => p.offset))).toBeCloseTo(-400, 0);
    expect(placeAt(places, 200).climb).toBeCloseTo(-7, 1);
    const tow = flown({ pattern: 'aerotow' }, glider);
    expect((tow.at(-1) as Place).climb).toBeCloseTo((Math.atan(0.06) * 180) / Math.PI, 1);
    continuous(places);
  });

  test('[F1019] paths of a closed end are none, and a wrong entry is said and costs nothing else', () => {
    const runway = runwayFeature('rwy', a, b, [{ designator: '07', closed: true }, { designator: '25' }]);
    const patterns = [
      { pattern: 'break', end: 0 },
      { pattern: 'break', end: 1, side: 'up' },
      { pattern: 'loop', end: 1 },
      7,
    ];
    const contents = contentsOf([{ ...runway, properties: { ...runway.properties, patterns } }]);
    const names = everyPath(contents, (kind) => kind === 'pattern', null).map((p) => p.ref.path);
    expect(names).toEqual(['rwy/25/break']);
    const reasons = contents.problems.map((p) => p.reason);
    expect(reasons.some((r) => r.startsWith('patterns.1.side'))).toBe(true);
    expect(reasons.some((r) => r.startsWith('patterns.2.pattern'))).toBe(true);
    expect(reasons.some((r) => r.startsWith('patterns.3'))).toBe(true);
  });
});

import Geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { beyondEveryLens } from '../../../src/figures/log/beyond-every-lens';
import type { Marks } from '../../../src/figures/log/measure';
import { measurePass } from '../../../src/figures/log/measure-pass';
import { pixelsPerMm } from '../../../src/figures/log/pixels-per-mm';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

// 27's threshold at 430 m, 15 m under the wheels, glide 3 degrees, nose 4 degrees up.
const threshold = { lng: 8.535, lat: 47.4 };
const subject = { ...plainSubject, approachAttitude: 4 };
const survey = contentsOf(
  [
    runwayFeature(
      'rwy',
      [8.5, 47.4],
      [threshold.lng, threshold.lat],
      [
        { designator: '09', elevation: 430, glide: 3, crossingHeight: 15 },
        { designator: '27', elevation: 430, glide: 3, crossingHeight: 15 },
      ],
    ),
    spotFeature('mound', [8.55, 47.3978], { eyeHeight: 2, ground: 428 }),
    spotFeature('beneath', [8.55, 47.3996], { eyeHeight: 2, ground: 428 }),
  ],
  {
    site: { elevation: 430 },
    subjects: [subject, { ...subject, key: 'heli', propulsion: 'rotor' }],
    kit: plainKit,
  },
);
const eyes = { mound: { lng: 8.55, lat: 47.3978 }, beneath: { lng: 8.55, lat: 47.3996 } } as const;

type V = readonly [number, number, number];
const rad = Math.PI / 180;
const plus = (a: V, b: V, t = 1): V => [a[0] + t * b[0], a[1] + t * b[1], a[2] + t * b[2]];
const dot = (a: V, b: V) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: V, b: V): V => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: V): V => plus([0, 0, 0], a, 1 / Math.sqrt(dot(a, a)));
const upAt = ({ lat, lng }: { lat: number; lng: number }): V => [
  Math.cos(lat * rad) * Math.cos(lng * rad),
  Math.cos(lat * rad) * Math.sin(lng * rad),
  Math.sin(lat * rad),
];
function ecef(at: { lat: number; lng: number }, height: number): V {
  // By the reduced latitude.
  const [a, b] = [6378137, 6378137 * (1 - 1 / 298.257223563)];
  const beta = Math.atan2(b * Math.sin(at.lat * rad), a * Math.cos(at.lat * rad));
  const foot: V = [
    a * Math.cos(beta) * Math.cos(at.lng * rad),
    a * Math.cos(beta) * Math.sin(at.lng * rad),
    b * Math.sin(beta),
  ];
  return plus(foot, upAt(at), height);
}

/** A frame of the arrival of 27 at a station, by a pinhole camera turned by `roll` degrees: px between the two marks, m, degrees. */
function frameAt(
  station: number,
  part: Marks['part'],
  {
    spot = 'mound',
    roll = 0,
    focal = 400,
    pixels = 6000 / 36,
    higher = 0,
  }: { spot?: keyof typeof eyes; roll?: number; focal?: number; pixels?: number; higher?: number } = {},
) {
  const line = Geodesic.Geodesic.WGS84.Inverse(47.4, 8.5, threshold.lat, threshold.lng);
  const on = Geodesic.Geodesic.WGS84.Direct(threshold.lat, threshold.lng, line.azi2 ?? NaN, station);
  const place = { lat: on.lat2 ?? NaN, lng: on.lon2 ?? NaN };
  const centre = ecef(place, 430 + 15 + station * Math.tan(3 * rad) + subject.height / 2 + higher);
  const up = upAt(place);
  const east = unit(cross([0, 0, 1], up));
  const north = cross(up, east);
  // It lands towards 270.
  const ahead = ((on.azi2 ?? NaN) + 180) * rad;
  const track = plus(plus([0, 0, 0], east, Math.sin(ahead)), north, Math.cos(ahead));
  const nose = plus(plus([0, 0, 0], track, Math.cos(4 * rad)), up, Math.sin(4 * rad));
  const axis = part === 'fuselage' ? nose : unit(cross(up, track));
  const half = (part === 'fuselage' ? subject.length : subject.span) / 2;
  const eye = ecef(eyes[spot], 430);
  const sight = plus(centre, eye, -1);
  const range = Math.sqrt(dot(sight, sight));
  const forward = unit(sight);
  const right0 = unit(cross(forward, upAt(eyes[spot])));
  const top0 = cross(right0, forward);
  const [c, s] = [Math.cos(roll * rad), Math.sin(roll * rad)];
  const right = plus(plus([0, 0, 0], right0, c), top0, s);
  const top = plus(plus([0, 0, 0], top0, c), right0, -s);
  const onPicture = (point: V) => {
    const d = plus(point, eye, -1);
    const depth = dot(d, forward);
    return [(focal * pixels * dot(d, right)) / depth, (focal * pixels * dot(d, top)) / depth] as const;
  };
  const [p, q] = [onPicture(plus(centre, axis, half)), onPicture(plus(centre, axis, -half))];
  return {
    range,
    elevation: Math.asin(dot(forward, upAt(eyes[spot]))) / rad,
    coming: dot(forward, track) < 0,
    marks: { part, extent: Math.hypot(p[0] - q[0], p[1] - q[1]), focalLength: focal, pixelsPerMm: pixels },
  };
}
const pass = (spot: string, key = 'plain') => ({ spot, path: 'rwy/27/arrival', subject: key });
const measured = (spot: string, marks: Marks, key = 'plain') =>
  measurePass(pass(spot, key), marks, survey, null)?.told ?? null;

describe('[L60] where it was, from a frame of an independent camera', () => {
  it.each([
    [2400, 'wings', 0],
    [1520, 'fuselage', 90],
    [1400, 'fuselage', -33],
    [1250, 'fuselage', 12],
    [900, 'fuselage', 180],
    [780, 'fuselage', 270],
  ] as const)('station %i by its %s, the camera turned by %i', (station, part, roll) => {
    const { marks, range, coming } = frameAt(station, part, { roll });
    const found = measured('mound', { ...marks, way: coming ? 'coming' : 'going' });
    if (found === null || typeof found === 'string') throw new Error(`expected a measure, got ${found}`);
    expect(Math.abs(found.slantRange / range - 1)).toBeLessThan(0.005);
    expect(found.slantRangeError).toBeGreaterThan(Math.abs(found.slantRange - range));
    expect(Math.abs(found.station - station)).toBeLessThan(found.slantRangeError);
    // Its range is the path's own: nothing is said of the height.
    expect(found.height).toBeNull();
  });

  it('side-on: range and height are measured against the path, the height from 30 degrees of elevation on', () => {
    // Over the spot beneath by 40 m more than the path has it.
    const { marks, range, elevation } = frameAt(1130, 'fuselage', {
      spot: 'beneath',
      focal: 100,
      higher: 20,
    });
    expect(elevation).toBeGreaterThan(30);
    const found = measured('beneath', { ...marks, way: 'side-on' });
    if (found === null || typeof found === 'string') throw new Error(`expected a measure, got ${found}`);
    expect(Math.abs(found.slantRange / range - 1)).toBeLessThan(0.02);
    expect(found.slantRange - found.pathRange).toBeGreaterThan(10);
    expect(Math.abs((found.height ?? NaN) - found.pathHeight - 20)).toBeLessThan(found.heightError ?? 0);
    const low = frameAt(1130, 'fuselage', { higher: 20 });
    expect(low.elevation).toBeLessThan(30);
    expect(measured('mound', { ...low.marks, way: 'side-on' })).toMatchObject({ height: null });
  });

  it('the error is 3 px, 1 degree and 2 % added in squares', () => {
    const { marks } = frameAt(1500, 'fuselage');
    const found = measured('mound', { ...marks, way: 'coming' });
    if (found === null || typeof found === 'string') throw new Error('expected a measure');
    const share = Math.hypot(3 / marks.extent, rad / Math.tan(found.angle * rad), 0.02);
    expect(found.slantRangeError).toBeCloseTo(found.slantRange * share, 9);
    const coarse = measured('mound', { ...marks, way: 'coming', within: 17 });
    if (coarse === null || typeof coarse === 'string') throw new Error('expected a measure');
    expect(coarse.slantRangeError).toBeGreaterThan(found.slantRangeError);
  });
});

describe('[L61] what practitioners would argue about: when there is no measure', () => {
  it('nose-on its length is foreshortened: under 30 degrees none; its wings say it', () => {
    const far = frameAt(4000, 'fuselage');
    expect(measured('mound', { ...far.marks, way: 'coming' })).toBe('edge-on');
    expect(measured('mound', { ...frameAt(4000, 'wings').marks, way: 'coming' })).toHaveProperty('station');
  });

  it('wings look the same from two places: neither is guessed', () => {
    expect(measured('mound', { ...frameAt(1400, 'wings').marks, way: 'coming' })).toBe('several');
  });

  it('larger than from anywhere on the path: another path or aircraft, no measure', () => {
    const { marks } = frameAt(1130, 'fuselage');
    expect(measured('mound', { ...marks, extent: marks.extent * 1.3, way: 'coming' })).toBe('nowhere');
    expect(measured('mound', { ...marks, extent: 5, way: 'coming' })).toBe('too-close');
    expect(measured('mound', { ...marks, part: 'wings', way: 'coming' }, 'heli')).toBe('no-wings');
    expect(measured('elsewhere', { ...marks, way: 'coming' })).toBeNull();
  });
});

describe('[L62] pixels a mm', () => {
  const body = { sensorWidth: 36, sensorHeight: 24, pixelsWide: 6000, pixelsHigh: 4000 };
  const record = (width: number | null, height: number | null, written: number | null = null) => ({
    width,
    height,
    pixelsPerMm: written,
  });
  it.each([
    ['as the camera wrote it', record(6000, 4000, 200), { width: 6000, height: 4000 }, 200],
    ['cropped, but the camera wrote it', record(3000, 2900, 166.7), { width: 3000, height: 2900 }, 166.7],
    ['as wide as the sensor', record(6000, 4000), { width: 6000, height: 4000 }, 6000 / 36],
    ['turned upright', record(6000, 4000), { width: 4000, height: 6000 }, 6000 / 36],
    ['of another width: cropped', record(5000, 4000), { width: 5000, height: 4000 }, 'cropped'],
    [
      'made smaller since it was written',
      record(6000, 4000, 166.7),
      { width: 2000, height: 1333 },
      'resized',
    ],
    [
      'whole but smaller, with the camera’s scale',
      record(3000, 2000, 166.7),
      { width: 3000, height: 2000 },
      'smaller',
    ],
    ['with a scale that no sensor has', record(6000, 4000, 2.8), { width: 6000, height: 4000 }, 6000 / 36],
  ] as const)('%s', (_, said, shown, expected) => {
    expect(pixelsPerMm(said, shown, body)).toBe(expected);
  });

  it('a focal length that no lens has by itself is asked', () => {
    expect(beyondEveryLens(560, plainKit.lenses)).toBe(true);
    expect(beyondEveryLens(400, plainKit.lenses)).toBe(false);
    expect(beyondEveryLens(404, plainKit.lenses)).toBe(false);
  });
});

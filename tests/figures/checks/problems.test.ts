import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../src/figures/figures-for';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, feature, runwayFeature, spotFeature } from '../../support/contents';

const at = Date.parse('2026-06-15T12:00:00Z');
const a = [8.55, 47.45] as const;
type Ends = readonly [Record<string, unknown>, Record<string, unknown>];

/** Near Zurich declination is 3.6 degrees: a true bearing of 143.6 is magnetic 140. */
function problems(features: readonly unknown[], sunside: Record<string, unknown> = {}, instant = at) {
  return figuresFor(contentsOf(features, sunside), instant, null, () => false).problems;
}
const runway = (ends: Ends, length = 1800, bearing = 143.6) =>
  runwayFeature('rwy', a, destination(a, bearing, length), ends);
const reasons = (...args: Parameters<typeof problems>) => problems(...args).map((p) => p.reason);

describe('doubts about runways', () => {
  test('[F110] none where designators fit within one', () => {
    for (const [x, y] of [
      ['14', '32'],
      ['13', '31'],
      ['15L', '33R'],
      ['N', 'S'],
      ['', ''],
    ] as const)
      expect(problems([runway([{ designator: x }, { designator: y }])])).toEqual([]);
  });

  test('[F109] what the data left in doubt is listed with the runway', () => {
    const drawn = runway([{ designator: '14' }, { designator: '32' }]);
    const doubted = {
      ...drawn,
      properties: { ...drawn.properties, doubts: ['Check both ends on the map.'] },
    };
    expect(problems([doubted])).toEqual([{ id: 'rwy', reason: 'Check both ends on the map.', used: true }]);
  });

  test('[F109] numbers counted from true north are right where they are marked or usual', () => {
    // Declination is 17 degrees east at the first place and 16 at the second.
    const north = [-120, 69.5] as const;
    const line = runwayFeature('rwy', north, destination(north, 160, 1800), [
      { designator: '16' },
      { designator: '34' },
    ]);
    expect(problems([line])).toEqual([]);
    const marked = runwayFeature('rwy', [-120, 55], destination([-120, 55], 160, 1800), [
      { designator: '16T' },
      { designator: '34T' },
    ]);
    expect(problems([marked])).toEqual([]);
    const unmarked = runwayFeature('rwy', [-120, 55], destination([-120, 55], 160, 1800), [
      { designator: '17' },
      { designator: '35' },
    ]);
    expect(problems([unmarked])).toHaveLength(2);
  });

  test('[F111] a designator against the azimuth is a doubt, computed all the same', () => {
    const found = problems([runway([{ designator: '32' }, { designator: '14' }])]);
    expect(found).toHaveLength(2);
    expect(found.every((p) => p.used && p.id === 'rwy')).toBe(true);
    expect(found[0]?.reason).toContain('Designator 32 does not fit the magnetic azimuth of 140 degrees');
    expect(found[0]?.reason).toContain('suggests 14');
    expect(reasons([runway([{ designator: '12' }, { designator: '30' }])])).toHaveLength(2);
  });

  test('[F112] two numbers that do not belong together, and numbers that are none', () => {
    expect(reasons([runway([{ designator: '14' }, { designator: '31' }])])).toEqual([
      expect.stringContaining('differ by 17 instead of 18'),
    ]);
    expect(reasons([runway([{ designator: '14' }, { designator: '47' }])])).toEqual([
      expect.stringContaining('47 has no number from 01 to 36'),
    ]);
  });

  test('[F113] odd lengths and thresholds off the runway', () => {
    const ends = [{ designator: '14' }, { designator: '32' }] as const;
    expect(reasons([runway(ends, 60)])).toEqual([expect.stringContaining('60 m long')]);
    expect(reasons([runway(ends, 9000)])).toEqual([expect.stringContaining('9000 m long')]);
    expect(reasons([runway([{ designator: '14', displaced: 1900 }, { designator: '32' }])])).toEqual([
      expect.stringContaining('displaced threshold of 14 (1900 m)'),
    ]);
  });

  test('[F114] under 1 m a runway is set aside', () => {
    const contents = contentsOf([runway([{ designator: '14' }, { designator: '32' }], 0.4)]);
    const figures = figuresFor(contents, at, null);
    expect(figures.runways).toEqual([]);
    expect(figures.problems).toEqual([
      { id: 'rwy', reason: expect.stringMatching(/in one place/) as string, used: false },
    ]);
  });
});

describe('doubts about spots and the site', () => {
  const ends = [{ designator: '14' }, { designator: '32' }] as const;
  const beside = (along: number, off: number) => destination(destination(a, 143.6, along), 143.6 + 90, off);

  test('[F115] a spot on a runway, on an apron or in a no-go area is said', () => {
    /** About 200 m across; over the antimeridian longitudes go on from the other side. */
    const square = (lng: number, lat: number) => {
      const [west, east] = [lng - 0.001, lng + 0.001 > 180 ? lng + 0.001 - 360 : lng + 0.001];
      const [south, north] = [lat - 0.001, lat + 0.001];
      return [
        [
          [west, south],
          [east, south],
          [east, north],
          [west, north],
          [west, south],
        ],
      ];
    };
    const found = (features: readonly unknown[]) =>
      problems(features).map(({ id, reason, used }) => [id, used, reason.split('.')[0]]);
    expect(found([runway(ends), spotFeature('s', beside(900, 14))])).toEqual([
      ['s', true, 'The spot is on runway 14/32'],
    ]);
    expect(found([runway(ends), spotFeature('s', beside(900, 16))])).toEqual([]);
    // Not on it, but behind it: F2086.
    expect(found([runway(ends), spotFeature('s', beside(-20, 0))])).toEqual([
      ['s', true, 'The spot is 20 m behind the end from which 14 departs: jet blast'],
    ]);
    expect(
      found([
        feature('apron', 'apron', 'Polygon', square(8.6, 47.4), { name: 'south apron' }),
        feature('no', 'no-go', 'Polygon', square(179.9995, -16), { reason: 'glider winch' }),
        spotFeature('s', [8.6005, 47.4004]),
        spotFeature('t', [-179.9999, -16.0004]),
        spotFeature('u', [-179.998, -16.0004]),
      ]),
    ).toEqual([
      ['s', true, 'The spot is on south apron'],
      ['t', true, 'The spot is in the no-go area glider winch'],
    ]);
  });

  test('[F116] a time zone that does not exist, and years without a magnetic model', () => {
    expect(problems([], { site: { timeZone: 'Europe/Nowhere' } })).toEqual([
      { id: null, reason: expect.stringContaining('no time zone "Europe/Nowhere"') as string, used: true },
    ]);
    expect(reasons([], {}, Date.parse('2013-01-01T00:00Z'))).toEqual([
      expect.stringContaining('World Magnetic Models'),
    ]);
    expect(reasons([], {}, Date.parse('2029-12-31T23:59Z'))).toEqual([]);
  });
});

describe('where nobody may stand', () => {
  test('[F117] a spot on a taxi route is a doubt, one beside it is none', () => {
    const line = [destination(a, 90, 50), destination(a, 90, 400), destination(a, 60, 800)];
    const route = feature('t1', 'taxi-route', 'LineString', line, { name: 'A' });
    const on = spotFeature('on', destination(destination(a, 90, 200), 0, 8));
    const beside = spotFeature('beside', destination(destination(a, 90, 200), 0, 30));
    expect(problems([route, on, beside])).toEqual([
      { id: 'on', reason: 'The spot is on taxi route A. Move it to where one may stand.', used: true },
    ]);
  });

  test('[F118] a line across half a country has no paths, and says so', () => {
    const survey = [runway([{ designator: '14' }, { designator: '32' }], 900_000), spotFeature('s', a)];
    const figures = figuresFor(contentsOf(survey), at, null);
    expect(figures.spots[0]?.paths).toEqual([]);
    expect(figures.problems.map((p) => p.reason).join()).toMatch(/Its paths are left out/);
  });
});

describe('doubts about moments', () => {
  const site = { site: { reference: [19.5, 69.6], timeZone: 'UTC' } };
  const rule = { event: 'sunset', minutes: -60 };
  test('[F954] a sun that does not set on the day is said, with the time that stands in', () => {
    const polar = { ...site, moments: { date: '2026-06-21', b: '18:00', bRule: rule } };
    expect(reasons([], polar)).toEqual([
      expect.stringMatching(
        /^Moment B follows sunset, which 2026-06-21 does not have here; 18:00 stands in\./,
      ),
    ]);
  });
  test('[F954] nothing is said on a day that has it, nor of a time that was typed', () => {
    const spring = { ...site, moments: { date: '2026-03-21', b: '18:00', bRule: rule } };
    expect(reasons([], spring)).toEqual([]);
    expect(reasons([], { ...site, moments: { date: '2026-06-21', b: '18:00' } })).toEqual([]);
  });
});

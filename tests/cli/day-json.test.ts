import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { dayJson } from '../../src/cli/day-json';
import { figuresJson } from '../../src/cli/figures-json';
import { outlookOf } from '../../src/figures/outlook';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { Scratch } from '../../src/figures/scratch';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { contentsOf, opened } from '../support/contents';
import { usnoRows } from '../reference/fixtures/sun-times';

const sample = readContents(opened(readFileSync('sample-sites/tolverby.geojson', 'utf8')));
const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/;

/** Every sample of a path as the figures have it at an instant. */
function samplesOf(spotId: string, pathId: string, at: number) {
  const spot = sample.spots.find((s) => s.id === spotId);
  const path = pathsOf(sample, () => true, null).find((p) => p.ref.path === pathId);
  if (!spot || !path) throw new Error(`expected ${spotId} and ${pathId}`);
  const outlook = outlookOf(sample, null);
  const scratch = new Scratch();
  return Array.from(path.samples.station, (station) =>
    inspectPath(spot, path, station, outlook, at, scratch),
  );
}

describe('--day', () => {
  test('[F245] is a date that exists', () => {
    const read = (text: string) => readArguments(['a.geojson', '--day', text], 0);
    expect(read('2028-02-29')).toMatchObject({ ok: true, value: { day: '2028-02-29' } });
    for (const text of ['2026-02-29', '2026-6-21', '21.06.2026', 'today', '', '2026-06-21T00:00:00Z'])
      expect(read(text)).toEqual({
        ok: false,
        reason: `--day: expected a date like 2026-06-21, got "${text}"`,
      });
  });

  test('[F246] names each spot and path in order, covers the day, and says what --at says', () => {
    const day = dayJson(sample, '2026-10-25', null);
    expect(Object.keys(day)).toEqual(['civilDawn', 'sunrise', 'sunset', 'civilDusk', 'sunUp', 'windows']);
    const spots = figuresJson(sample, [], Date.parse('2026-10-25T10:00:00Z'), null).spots;
    const wanted = spots.flatMap((spot) => spot.paths.map(({ path }) => `${spot.id} ${path}`));
    const keys = [...new Set(day.windows.map(({ spot, path }) => `${spot} ${path}`))];
    expect(keys).toEqual(wanted);
    for (const key of keys) {
      const windows = day.windows.filter(({ spot, path }) => `${spot} ${path}` === key);
      // Europe/Warsaw gains an hour on that day.
      expect(windows[0]?.from).toBe('2026-10-24T22:00:00Z');
      expect(windows.at(-1)?.to).toBe('2026-10-25T23:00:00Z');
      windows.slice(1).forEach((window, i) => expect(window.from).toBe(windows[i]?.to));
    }
    const some = day.windows.filter((_, i) => i % 149 === 7);
    expect(some.length).toBeGreaterThan(2);
    for (const window of some) {
      expect(window.from).toMatch(instant);
      const middle = (Date.parse(window.from) + Date.parse(window.to)) / 2;
      const there = { ...sample, spots: sample.spots.filter(({ id }) => id === window.spot) };
      const [spot] = figuresJson(there, [], middle, null).spots;
      const path = spot?.paths.find((p) => p.path === window.path);
      // A window stays with its sample while that is within 0.02 of the best: the light is one of those.
      const lights = samplesOf(window.spot, path?.path ?? '', middle)
        .filter(({ score }) => score.total >= (path?.best.score.total ?? 1) - 0.0201)
        .map(({ light }) => light);
      expect(lights).toContain(window.light);
    }
  });

  test('[R90] is the almanac of the civil day of the zone: USNO, and null with a word where there is nothing', () => {
    const site = (lng: number, lat: number, timeZone: string) =>
      contentsOf([], { site: { reference: [lng, lat], timeZone } });
    for (const row of usnoRows) {
      const day = dayJson(site(row.lng, row.lat, 'UTC'), row.date, null);
      for (const event of ['civilDawn', 'sunrise', 'sunset', 'civilDusk'] as const) {
        expect(day[event]).toMatch(instant);
        const off = Date.parse(day[event] ?? '') - Date.parse(`${row.date}T${row[event]}:00Z`);
        expect(Math.abs(off), `${row.place} ${event}`).toBeLessThan(60_000);
      }
      expect(day.sunUp).toBe('rises');
    }
    // Shanghai's own day: rise 21:43 UTC on the date before (USNO prints it for the UTC date; a day apart it moves by under a minute).
    const shanghai = dayJson(site(121.45806, 31.22222, 'Asia/Shanghai'), '2026-09-23', null);
    expect(shanghai.sunrise?.slice(0, 13)).toBe('2026-09-22T21');
    expect(shanghai.sunset?.slice(0, 13)).toBe('2026-09-23T09');
    const none = { civilDawn: null, sunrise: null, sunset: null, civilDusk: null, windows: [] };
    const longyearbyen = site(15.64689, 78.22334, 'Arctic/Longyearbyen');
    expect(dayJson(longyearbyen, '2026-06-21', null)).toEqual({ ...none, sunUp: 'always' });
    expect(dayJson(longyearbyen, '2026-12-21', null)).toEqual({ ...none, sunUp: 'never' });
    expect(dayJson(site(166.676, -77.846, 'Antarctica/McMurdo'), '2026-06-21', null).sunUp).toBe('never');
  });
});

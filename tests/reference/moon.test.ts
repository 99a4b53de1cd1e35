import { Body, Observer, SearchAltitude } from 'astronomy-engine';
import { describe, expect, test } from 'vitest';
import { moonAt, moonPhase } from '../../src/figures/light/moon';
import { moonsAmong } from '../../src/figures/light/moons-among';
import { nightOf } from '../../src/figures/light/night';

const kinshasa = [15.31357, -4.32758] as const;
const lima = [-77.02824, -12.04318] as const;
const longyearbyen = [15.64689, 78.22334] as const;
const tolverby = [18.1734, 50.9287] as const;
const day = 86_400_000;

/*
 * U.S. Naval Observatory, "rise/set/transit for one day", UTC, as stored in mourner/suncalc test/fixtures.json (generated
 * 2026-06-17; read). Lit shares in per cent as it prints them.
 */
const usno = [
  ['Kinshasa', kinshasa, '2026-01-03', '17:34', '04:41', 100],
  ['Kinshasa', kinshasa, '2026-01-10', '22:57', '10:42', 52],
  ['Kinshasa', kinshasa, '2026-01-25', '10:13', '22:28', 42],
  ['Kinshasa', kinshasa, '2026-03-20', '06:02', '18:19', 3],
  ['Kinshasa', kinshasa, '2026-06-21', '10:37', '22:59', 46],
  ['Kinshasa', kinshasa, '2026-12-24', '17:51', '04:58', 100],
  ['Lima', lima, '2026-01-25', '16:45', '03:55', 42],
  ['Lima', lima, '2026-06-01', '23:58', '12:25', 99],
  ['Lima', lima, '2026-07-06', '03:46', '16:05', 64],
  ['Lima', lima, '2026-01-03', null, '10:51', 100],
] as const;

const clock = (instant: number | undefined) =>
  instant === undefined ? null : new Date(Math.round(instant / 60_000) * 60_000).toISOString().slice(11, 16);
const minutes = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));

describe('the moon against published rows', () => {
  test.each(usno)(
    '[R110] %s: rise and set within two minutes of USNO on %s',
    (_, place, date, rise, set, lit) => {
      const from = Date.parse(`${date}T00:00:00Z`);
      const night = nightOf(place, from, from + day);
      const risen = clock(night.moon.find((s) => s.value === 'up' && s.from > from)?.from);
      const down = clock(night.moon.find((s) => s.value === 'down' && s.from > from)?.from);
      if (rise === null) expect(risen).toBeNull();
      else expect(Math.abs(minutes(risen ?? '99:99') - minutes(rise))).toBeLessThanOrEqual(2);
      expect(Math.abs(minutes(down ?? '99:99') - minutes(set))).toBeLessThanOrEqual(2);
      expect(Math.abs(100 * night.lit - lit)).toBeLessThanOrEqual(5);
    },
  );

  /* JPL Horizons, topocentric, refracted, as stored in the same file (read). */
  test.each([
    ['2026-01-03T00:00:00Z', 203.549485, 37.959138],
    ['2026-01-03T18:00:00Z', 93.023902, 26.606229],
    ['2026-03-20T12:00:00Z', 177.426498, 21.393191],
    ['2026-07-06T06:00:00Z', 215.842495, 8.755213],
    ['2026-12-24T06:00:00Z', 288.123329, 23.010175],
    ['2050-06-21T06:00:00Z', 78.658713, 14.291812],
  ])(
    '[R111] altitude and azimuth within a fifth of a degree of JPL Horizons at %s',
    (at, azimuth, altitude) => {
      const moon = moonAt(longyearbyen, Date.parse(at));
      expect(Math.abs(moon.altitude - altitude)).toBeLessThan(0.2);
      expect(Math.abs(moon.azimuth - azimuth)).toBeLessThan(0.3);
    },
  );

  test('[R112] phases go by their names: new 2026-01-18, first quarter -26, full -03 (USNO, from the same file)', () => {
    const named = (date: string) => moonPhase(moonAt(tolverby, Date.parse(date)).phase);
    expect(named('2026-01-18T20:00Z')).toBe('new');
    expect(named('2026-01-26T04:00Z')).toBe('first-quarter');
    expect(named('2026-01-03T10:00Z')).toBe('full');
    expect(named('2026-01-10T16:00Z')).toBe('last-quarter');
    expect(named('2026-01-22T12:00Z')).toBe('waxing-crescent');
    expect(named('2026-01-14T12:00Z')).toBe('waning-crescent');
  });
});

test('[R115] of January 2026 the third is the day of the full moon, the eighteenth of the new one', () => {
  const dates = Array.from({ length: 31 }, (_, d) => `2026-01-${String(d + 1).padStart(2, '0')}`);
  expect(moonsAmong(dates, 'UTC')).toEqual({ full: [2], fresh: [17] });
});

describe('twilights', () => {
  const observer = new Observer(tolverby[1], tolverby[0], 0);
  test.each([
    ['nautical', -6],
    ['astronomical', -12],
    ['night', -18],
  ])(
    '[R113] %s begins in the evening when the sun is %s degrees down (astronomy-engine, half a minute)',
    (sky, altitude) => {
      const from = Date.parse('2026-09-21T12:00:00Z');
      const truth =
        SearchAltitude(Body.Sun, observer, -1, new Date(from), 1, altitude)?.date.getTime() ?? NaN;
      const begins = nightOf(tolverby, from, from + day / 2).sky.find((s) => s.value === sky)?.from ?? NaN;
      expect(Math.abs(begins - truth)).toBeLessThan(30_000);
    },
  );

  test('[R114] in a northern summer the night never comes, in the far north no twilight either', () => {
    const from = Date.parse('2026-06-21T00:00:00Z');
    const skies = (place: readonly [number, number]) =>
      new Set(nightOf(place, from, from + day).sky.map((s) => s.value));
    expect(skies([10, 58]).has('night')).toBe(false);
    expect([...skies(longyearbyen)]).toEqual(['day']);
  });
});

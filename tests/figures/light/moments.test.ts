import { describe, expect, test } from 'vitest';
import { momentsOf } from '../../../src/figures/light/moments';
import { isoInstant } from '../../../src/time/local-time';
import { contentsOf } from '../../support/contents';

const greenwich = { timeZone: 'UTC', reference: [0, 51.5] };
const moments = (moments: object, site: object = greenwich) =>
  momentsOf(contentsOf([], { site, moments }), 0);

describe('moments that follow the sun', () => {
  // Sun at 51.5 N on the meridian of Greenwich, to two minutes: it rises 03:43 and sets 20:21 on 21 June, 08:04 and
  // 15:54 on 21 December; it passes the meridian within a quarter of an hour of 12:00 all year (equation of time).
  const near = (got: number, expected: string) =>
    expect(Math.abs(got - Date.parse(expected)), isoInstant(got)).toBeLessThan(2.5 * 60_000);

  test('[F720] an hour after sunrise, an hour before sunset: the date moves, they move with it', () => {
    const rules = { aRule: { event: 'sunrise', minutes: 60 }, bRule: { event: 'sunset', minutes: -60 } };
    const june = moments({ date: '2026-06-21', ...rules });
    near(june.a, '2026-06-21T04:43:00Z');
    near(june.b, '2026-06-21T19:21:00Z');
    const december = moments({ date: '2026-12-21', ...rules });
    near(december.a, '2026-12-21T09:04:00Z');
    near(december.b, '2026-12-21T14:54:00Z');
    expect(december.unmet).toEqual([]);
  });

  test('[F721] noon is the transit of the sun, not 12:00: 11:44 early in November, 12:14 in February', () => {
    near(moments({ date: '2026-11-03', aRule: { event: 'noon', minutes: 0 } }).a, '2026-11-03T11:43:35Z');
    near(moments({ date: '2026-02-11', aRule: { event: 'noon', minutes: 0 } }).a, '2026-02-11T12:14:13Z');
  });

  test('[F722] a typed time stays, whatever the date', () => {
    const typed = moments({ date: '2026-12-21', a: '07:30', bRule: { event: 'sunset', minutes: 0 } });
    expect(isoInstant(typed.a)).toBe('2026-12-21T07:30:00Z');
  });

  test('[F723] where the sun does not rise the clock time holds, and it is said', () => {
    const north = { timeZone: 'UTC', reference: [18.9, 69.7] };
    const polar = moments(
      { date: '2026-12-21', a: '10:15', aRule: { event: 'sunrise', minutes: 30 } },
      north,
    );
    expect(isoInstant(polar.a)).toBe('2026-12-21T10:15:00Z');
    expect(polar.unmet).toEqual(['a']);
  });
});

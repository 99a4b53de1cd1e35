import { describe, expect, test } from 'vitest';
import { SunTrack } from '../../../src/figures/light/sun-track';
import { sunTimes } from '../../../src/figures/light/sun-times';
import { lightStretches } from '../../../src/figures/when/day-windows';
import { classUnder, totalAt } from '../../../src/figures/when/best-light';
import { dayOf } from '../../../src/time/local-time';
import { once } from '../../support/once';
import { fieldAt } from './field';

const hour = 3_600_000;

/** The light through a summer day on every path past a spot 240 m off a runway, for runways that lie in every direction. */
const throughSummer = once(() =>
  [0, 40, 80, 120, 160, 200, 240, 280, 320].flatMap((bearing) => {
    const field = fieldAt([8.5, 47.4], bearing, 240, { timeZone: 'Europe/Zurich' });
    const { from, to } = dayOf('2026-06-21', 'Europe/Zurich');
    return field.views.map((view) => lightStretches(view, field.spot.position, from, to));
  }),
);

describe('the light through a day', () => {
  test.each([
    ['a summer day', [8.5, 47.4], 'Europe/Zurich', '2026-06-21', 24],
    ['the day that loses an hour', [8.5, 47.4], 'Europe/Zurich', '2026-03-29', 23],
    ['the day that gains one', [8.5, 47.4], 'Europe/Zurich', '2026-10-25', 25],
    ['the southern half', [151.1772, -33.9461], 'Australia/Sydney', '2026-10-04', 23],
    ['a day that begins at one', [31.4, 30.1], 'Africa/Cairo', '2026-04-24', 23],
    ['night all day at 70 degrees north', [18.91, 69.68], 'Europe/Oslo', '2026-12-21', 24],
    ['sun all day there', [18.91, 69.68], 'Europe/Oslo', '2026-06-21', 24],
  ] as const)('[F242] covers %s without a gap, and each moment has the light of its figures', (...row) => {
    const [, place, timeZone, date, hours] = row;
    const field = fieldAt(place, 300, 240, { timeZone });
    const { from, to } = dayOf(date, timeZone);
    expect((to - from) / hour).toBe(hours);
    field.views.slice(0, 2).forEach((view, k) => {
      const stretches = lightStretches(view, field.spot.position, from, to);
      expect(stretches[0]?.from).toBe(from);
      expect(stretches.at(-1)?.to).toBe(to);
      const track = new SunTrack(field.spot.position);
      // Lights of the samples that one may stay with: those within 0.02 of the best.
      const lights = (instant: number) => {
        const sun = track.at(instant);
        const best = field.at(instant).paths[k]?.best;
        return new Set(
          Array.from({ length: view.count }, (_, i) => i).flatMap((i) =>
            totalAt(view, i, sun) >= (best?.score.total ?? 1) - 0.0201 ? [classUnder(view, i, sun)] : [],
          ),
        );
      };
      stretches.forEach((stretch, i) => {
        const next = stretches[i + 1];
        if (next) {
          expect(next.from).toBe(stretch.to);
          expect(next.value).not.toBe(stretch.value);
          // The boundary is exact to the second where the sun is, within what its place is known to (0.001 degrees).
          expect(stretch.to % 1000).toBe(0);
        }
        if (stretch.to - stretch.from < 20_000) return;
        expect(lights(stretch.from + 3000)).toContain(stretch.value);
        expect(lights(stretch.to - 3000)).toContain(stretch.value);
        expect(lights((stretch.from + stretch.to) / 2)).toContain(stretch.value);
      });
    });
  });

  test('[F243] night and twilight begin when the almanac says, at every sort of latitude', () => {
    // USNO, one day's rise and set, whole minutes (check-values 1.2).
    const rows = [
      ['Kyiv', [30.5238, 50.45466], '2026-01-03', '05:20', '05:58', '14:07', '14:45'],
      ['Bogota', [-74.08175, 4.60971], '2026-06-21', '10:24', '10:47', '23:10', '23:33'],
      ['Ushuaia', [-68.31591, -54.81084], '2026-06-21', '12:14', '12:59', '20:11', '20:57'],
      ['Tromso', [18.95508, 69.6489], '2026-03-20', '03:44', '04:44', '17:02', '18:02'],
    ] as const;
    for (const [name, place, date, ...clocks] of rows) {
      const field = fieldAt(place, 0, 150);
      const { from, to } = dayOf(date, 'UTC');
      const view = field.views[0];
      if (!view) throw new Error('expected a path');
      const stretches = lightStretches(view, field.spot.position, from, to);
      const sky = stretches.filter((s) => s.value === 'dark' || s.value === 'civil-twilight');
      const edges = [...new Set(sky.flatMap((s) => [s.from, s.to]))].filter((t) => t > from && t < to);
      expect(edges, name).toHaveLength(4);
      clocks.forEach((clock, i) => {
        const off = Math.abs((edges[i] ?? NaN) - Date.parse(`${date}T${clock}:00Z`)) / 60_000;
        expect(off, `${name} ${clock}`).toBeLessThan(1);
      });
      expect(sunTimes(field.spot.position, from, to).sunUp).toBe('rises');
    }
  });

  test('[F244] has no daylight where the sun stays down, and no night where it stays up', () => {
    // USNO: Longyearbyen continuously above the horizon in June, below the twilight limit in December.
    const field = fieldAt([15.64689, 78.22334], 0, 150, { timeZone: 'Arctic/Longyearbyen' });
    const view = field.views[0];
    if (!view) throw new Error('expected a path');
    const classes = (date: string) => {
      const { from, to } = dayOf(date, 'Arctic/Longyearbyen');
      return new Set(lightStretches(view, field.spot.position, from, to).map((s) => s.value));
    };
    expect([...classes('2026-12-21')]).toEqual(['dark']);
    const june = classes('2026-06-21');
    expect(june.has('dark') || june.has('civil-twilight')).toBe(false);
    expect(june.size).toBeGreaterThan(1);
  });

  test('[F708] does not flicker: one stays with a sample while another is hardly better', () => {
    for (const stretches of throughSummer()) {
      // To and fro is: three lights in a row that do not last.
      const short = stretches.map((s) => s.to - s.from < 5 * 60_000);
      const flickers = short.filter((_, i) => short[i] && short[i + 1] && short[i + 2]);
      expect(flickers).toHaveLength(0);
    }
  });

  test('[F2081] nor at the border of two lights: a light is kept while a picture as good has it', () => {
    let back = 0;
    for (const stretches of throughSummer()) {
      // A sample just inside of front light drifts out of it with the sun, the next one is found just inside again.
      back += stretches.filter(
        (s, i) =>
          s.to - s.from < 10 * 60_000 &&
          i > 0 &&
          stretches[i - 1]?.value === stretches[i + 1]?.value &&
          s.value !== 'dark' &&
          s.value !== 'civil-twilight',
      ).length;
    }
    expect(back).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { chosenMoments, skyStretches, solarNoon } from '../../../src/figures/light/day-light';

const at = (text: string) => Date.parse(text);
const day = (date: string): [number, number] => [at(`${date}T00:00:00Z`), at(`${date}T24:00:00Z`)];
const seconds = (a: number | null, b: number) => Math.abs((a ?? NaN) - b) / 1000;

describe('solar noon', () => {
  // NREL SPA web calculator, as read in pvlib tests/test_solarposition.py (check-values 1.2); tolerance 5 s.
  it.each([
    ['1996-07-05', [0, -35], '1996-07-05T12:04:36Z'],
    ['2004-12-04', [0, -35], '2004-12-04T11:50:22Z'],
    ['2015-01-02', [-105.1786, 39.742476], '2015-01-02T19:04:45Z'],
  ] as const)('is the transit of NREL SPA on %s', (date, place, transit) => {
    expect(seconds(solarNoon(place, ...day(date)), at(transit))).toBeLessThan(5);
  });

  // USNO, one day's rise, set and transit, whole minutes, from the fixtures of suncalc (check-values 1.2).
  it.each([
    ['Kyiv', [30.5238, 50.45466], '2026-01-03', '10:02'],
    ['Bogota', [-74.08175, 4.60971], '2026-06-21', '16:58'],
    ['Ushuaia', [-68.31591, -54.81084], '2026-06-21', '16:35'],
    ['Shanghai', [121.45806, 31.22222], '2026-09-23', '03:47'],
    ['Tromso', [18.95508, 69.6489], '2026-03-20', '10:52'],
  ] as const)('is the transit of USNO in %s', (_, place, date, clock) => {
    expect(seconds(solarNoon(place, ...day(date)), at(`${date}T${clock}:00Z`))).toBeLessThan(60);
  });

  it('is nowhere in a stretch that the sun spends on one side', () => {
    expect(solarNoon([0, -35], at('1996-07-05T13:00:00Z'), at('1996-07-05T22:00:00Z'))).toBeNull();
  });
});

describe('night, twilight and day', () => {
  // USNO, as above: civil dawn 05:20, rise 05:58, set 14:07, civil dusk 14:45 UTC.
  it('follow each other as USNO has it in Kyiv', () => {
    const spans = skyStretches([30.5238, 50.45466], ...day('2026-01-03'));
    expect(spans.map((s) => s.value)).toEqual(['night', 'twilight', 'day', 'twilight', 'night']);
    const changes = spans.slice(1).map((s) => s.from);
    ['05:20', '05:58', '14:07', '14:45'].forEach((clock, i) => {
      expect(seconds(changes[i] ?? null, at(`2026-01-03T${clock}:00Z`))).toBeLessThan(60);
    });
  });

  it('cover the whole day without a gap', () => {
    const [from, to] = day('2026-06-21');
    const spans = skyStretches([18.06871, 59.32938], from, to);
    expect(spans[0]?.from).toBe(from);
    expect(spans.at(-1)?.to).toBe(to);
    spans.slice(1).forEach((s, i) => expect(s.from).toBe(spans[i]?.to));
  });

  it('are one stretch where the sun stays up or down', () => {
    const longyearbyen = [15.64689, 78.22334] as const;
    expect(skyStretches(longyearbyen, ...day('2026-06-21')).map((s) => s.value)).toEqual(['day']);
    expect(skyStretches(longyearbyen, ...day('2026-12-21')).map((s) => s.value)).toEqual(['night']);
  });
});

describe('quick choices', () => {
  it('are an hour inside the day', () => {
    const chosen = chosenMoments(
      { sunrise: at('2026-01-03T05:58:00Z'), sunset: at('2026-01-03T14:07:00Z') },
      17,
    );
    expect(chosen).toEqual({
      afterSunrise: at('2026-01-03T06:58:00Z'),
      beforeSunset: at('2026-01-03T13:07:00Z'),
      noon: 17,
    });
  });
  it('are missing when the sun does not rise or set', () => {
    expect(chosenMoments({ sunrise: null, sunset: null }, null)).toEqual({
      afterSunrise: null,
      beforeSunset: null,
      noon: null,
    });
  });
});

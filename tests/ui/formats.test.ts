import { describe, expect, test } from 'vitest';
import { readPreferences } from '../../src/state/preferences.svelte';
import { formatsFor } from '../../src/ui/formats';

const metric = formatsFor(readPreferences('{"speeds":"m/s","dates":"en-GB"}'));
const feet = formatsFor(
  readPreferences(
    '{"lengths":"ft","speeds":"kt","bearings":"plain","coordinates":"sexagesimal","clock":"12h","dates":"de"}',
  ),
);

describe('figures the way the user prefers', () => {
  test('are printed in metres and m/s, three digits, decimal degrees, 24 h', () => {
    expect(metric.length(1239.6)).toBe('1,240 m');
    expect(metric.fine(1.68)).toBe('1.7 m');
    expect(metric.speed(70.4)).toBe('70 m/s');
    expect(metric.bearing(89.2)).toBe('089°');
    expect(metric.coordinates([-0.485, 51.4775])).toBe('51.4775, -0.485');
    expect(metric.clock('18:30')).toBe('18:30');
    expect(metric.day('2026-06-21')).toMatch(/^Sunday,? 21 June 2026$/);
  });

  test('or in feet and knots, plain bearings, degrees-minutes-seconds, 12 h, another language', () => {
    expect(feet.length(1239.6)).toBe('4,067 ft');
    expect(feet.fine(1.68)).toBe('5.5 ft');
    expect(feet.speed(70.4)).toBe('137 kt');
    expect(feet.bearing(89.2)).toBe('89°');
    expect(feet.bearing(359.7)).toBe('0°');
    expect(feet.coordinates([-0.485, 51.4775])).toBe('51°28′39.00″N 0°29′06.00″W');
    expect(feet.clock('18:30')).toBe('6:30 pm');
    expect(feet.day('2026-06-21')).toMatch(/^Sonntag,? 21\. Juni 2026$/);
  });

  test('a missing length is a dash in every unit', () => {
    expect([metric.length(null), feet.length(null), feet.fine(null)]).toEqual(['–', '–', '–']);
  });

  test('[L10] what is typed is in the preferred unit; a unit behind the number goes before it', () => {
    expect(feet.readLength('50')).toEqual({ ok: true, metres: expect.closeTo(15.24, 9) as number });
    expect(feet.readLength('50 m')).toEqual({ ok: true, metres: 50 });
    expect(metric.readLength('50 ft')).toEqual({ ok: true, metres: expect.closeTo(15.24, 9) as number });
    expect(feet.readSpeed('90')).toEqual({ ok: true, metresPerSecond: expect.closeTo(46.3, 9) as number });
    expect(feet.readSpeed('46.3 m/s')).toEqual({ ok: true, metresPerSecond: 46.3 });
    expect(metric.readSpeed('180 km/h')).toEqual({
      ok: true,
      metresPerSecond: expect.closeTo(50, 9) as number,
    });
  });

  test('a field shows what can be typed back', () => {
    expect([metric.typedLength(37.57), feet.typedLength(15.24), feet.typedSpeed(46.3)]).toEqual([
      '37.57',
      '50',
      '90',
    ]);
    expect([metric.lengthUnit, feet.lengthUnit, feet.speedUnit]).toEqual(['m', 'ft', 'kt']);
  });

  test('what is no speed or length is answered with the mend in the preferred unit', () => {
    expect(feet.readSpeed('fast')).toMatchObject({
      ok: false,
      reason: expect.stringContaining('140 kt') as string,
    });
    expect(feet.readSpeed('90 furlongs')).toMatchObject({ ok: false });
    expect(feet.readLength('tall')).toMatchObject({
      ok: false,
      reason: expect.stringContaining('Type feet') as string,
    });
  });
});

describe('the clock', () => {
  test.each([
    ['00:05', '12:05 am'],
    ['11:59', '11:59 am'],
    ['12:00', '12:00 pm'],
    ['24:00', '12:00 am'],
  ])('%s is %s', (clock, words) => {
    expect(feet.clock(clock)).toBe(words);
  });
  test('a full hour takes little room', () => {
    expect([metric.hour('18:00'), feet.hour('18:00'), feet.hour('00:00')]).toEqual(['18', '6pm', '12am']);
  });
  test('what is no date stays as it is', () => {
    expect(metric.day('soon')).toBe('soon');
  });
});

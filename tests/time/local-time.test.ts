import { describe, expect, test } from 'vitest';
import {
  clockAt,
  dateAt,
  datePlus,
  dayOf,
  instantOf,
  isoInstant,
  isTimeZone,
  offsetAt,
  parseDate,
  parseInstant,
  wholeSecond,
} from '../../src/time/local-time';

const at = (iso: string) => Date.parse(iso);
const hour = 3_600_000;

describe('instants and wall clocks', () => {
  test.each([
    ['2026-01-15', '08:30', 'Europe/Zurich', '2026-01-15T07:30:00Z'],
    ['2026-07-15', '08:30', 'Europe/Zurich', '2026-07-15T06:30:00Z'],
    ['2026-07-15', '08:30', 'Asia/Kathmandu', '2026-07-15T02:45:00Z'],
    ['2026-09-27', '09:45', 'Pacific/Chatham', '2026-09-26T20:00:00Z'],
    ['2026-01-15', '00:10', 'America/Denver', '2026-01-15T07:10:00Z'],
  ])('[T1] %s %s in %s', (date, clock, zone, iso) => {
    expect(instantOf(date, clock, zone)).toBe(at(iso));
    expect([dateAt(at(iso), zone), clockAt(at(iso), zone)]).toEqual([date, clock]);
  });

  test('[T2] a time that the clocks skip is moved on, one that comes twice is the first', () => {
    // London springs forward at 01:00 UTC on 29 March and back at 01:00 UTC on 25 October 2026.
    expect(instantOf('2026-03-29', '01:30', 'Europe/London')).toBe(at('2026-03-29T01:30:00Z'));
    expect(clockAt(at('2026-03-29T01:30:00Z'), 'Europe/London')).toBe('02:30');
    expect(instantOf('2026-10-25', '01:30', 'Europe/London')).toBe(at('2026-10-25T00:30:00Z'));
    expect(offsetAt(at('2026-10-25T00:30:00Z'), 'Europe/London')).toBe('UTC+01:00');
    expect(offsetAt(at('2026-10-25T01:30:00Z'), 'Europe/London')).toBe('UTC+00:00');
  });

  test('[T3] a civil day has 23, 24 or 25 hours, and begins when the zone says', () => {
    const length = (date: string, zone: string) => {
      const { from, to } = dayOf(date, zone);
      return (to - from) / hour;
    };
    expect(length('2026-03-29', 'Europe/Zurich')).toBe(23);
    expect(length('2026-10-25', 'Europe/Zurich')).toBe(25);
    expect(length('2026-06-21', 'Europe/Zurich')).toBe(24);
    expect(length('2026-10-04', 'Australia/Lord_Howe')).toBe(23.5);
    expect(dayOf('2026-06-21', 'Asia/Tokyo').from).toBe(at('2026-06-20T15:00:00Z'));
    // Where the clocks skip midnight, the day begins at 01:00.
    expect(clockAt(dayOf('2026-04-24', 'Africa/Cairo').from, 'Africa/Cairo')).toBe('01:00');
  });

  test('[T4] the clock rounds to the minute; instants print without fractions they have not', () => {
    expect(clockAt(at('2026-06-21T17:59:31Z'), 'UTC')).toBe('18:00');
    expect(clockAt(at('2026-06-21T17:59:29Z'), 'UTC')).toBe('17:59');
    expect(isoInstant(at('2026-06-21T17:00:00Z'))).toBe('2026-06-21T17:00:00Z');
    expect(isoInstant(at('2026-06-21T17:00:00Z') + 0.4)).toBe('2026-06-21T17:00:00Z');
  });

  test('[T5] days on, over months and years', () => {
    expect(datePlus('2026-12-31', 1)).toBe('2027-01-01');
    expect(datePlus('2028-03-01', -1)).toBe('2028-02-29');
  });

  test('[T6] zones that exist, and instants that are some', () => {
    expect(['Europe/Zurich', 'UTC', 'America/Argentina/Ushuaia'].map(isTimeZone)).toEqual([true, true, true]);
    expect(['', 'Europe/Nowhere', 'CET-1', '../etc'].map(isTimeZone)).toEqual([false, false, false, false]);
    expect(parseInstant('2026-06-21T19:00:00+02:00')).toBe(at('2026-06-21T17:00:00Z'));
    expect(parseInstant('2026-06-21T19:00:00')).toBeNull();
    expect(parseInstant('noon')).toBeNull();
  });

  test('[T10] dates that exist', () => {
    expect(['2026-06-21', '2028-02-29', '0001-01-01'].map(parseDate)).toEqual([
      '2026-06-21',
      '2028-02-29',
      '0001-01-01',
    ]);
    expect(['2026-02-29', '2026-13-01', '2026-6-1', '20260621', '2026-06-21Z', ''].map(parseDate)).toEqual(
      Array(6).fill(null),
    );
  });

  test('[T11] the whole second at which something has happened, within its day', () => {
    const end = at('2026-06-22T00:00:00Z');
    expect(wholeSecond(at('2026-06-21T17:00:00Z'), end)).toBe(at('2026-06-21T17:00:00Z'));
    expect(wholeSecond(at('2026-06-21T17:00:00Z') + 1, end)).toBe(at('2026-06-21T17:00:01Z'));
    expect(wholeSecond(end - 1, end)).toBe(end - 1000);
  });
});

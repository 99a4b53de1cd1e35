import { describe, expect, test } from 'vitest';
import { readDate, type DateReading } from '../../src/time/typed-date';
import { monthNames } from '../../src/time/month-names';

const english: DateReading = { months: monthNames('en-GB'), monthFirst: false, year: 2026 };
const american = { ...english, monthFirst: true };
const german = { ...english, months: monthNames('de') };

describe('[U400] a date as people type it', () => {
  test.each([
    ['2026-06-21', '2026-06-21'],
    ['21 Jun 2026', '2026-06-21'],
    ['Sunday, 21 June 2026', '2026-06-21'],
    ['21 june', '2026-06-21'],
    ['June 21st, 2027', '2027-06-21'],
    ['21.6.2026', '2026-06-21'],
    ['21/6/26', '2026-06-21'],
    ['3 sept 2026', '2026-09-03'],
    ['29 Feb 2028', '2028-02-29'],
  ])('%s is %s', (text, date) => expect(readDate(text, english)).toBe(date));

  test('of two small numbers the first is the day, and the month where dates are American', () => {
    expect(readDate('6/7/2026', english)).toBe('2026-07-06');
    expect(readDate('6/7/2026', american)).toBe('2026-06-07');
    // Twenty-one is no month, whichever way somebody writes.
    expect(readDate('6/21/2026', english)).toBe('2026-06-21');
    expect(readDate('21/6/2026', american)).toBe('2026-06-21');
  });

  test('months are read in the language that dates are shown in', () => {
    expect(readDate('3. März 2026', german)).toBe('2026-03-03');
    expect(readDate('24. Dezember', german)).toBe('2026-12-24');
  });

  test.each([
    '',
    'tomorrow',
    '21',
    '30 Feb 2026',
    '31/4/2026',
    '21 June 1066',
    'June',
    'May June 3',
    '2026-13-01',
  ])('"%s" is none', (text) => expect(readDate(text, english)).toBeNull());
});

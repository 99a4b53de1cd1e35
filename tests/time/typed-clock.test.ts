import { describe, expect, test } from 'vitest';
import { readClock } from '../../src/time/typed-clock';

describe('[U9] a time of day as people type it', () => {
  test.each([
    ['18:30', '18:30'],
    ['7', '07:00'],
    ['0730', '07:30'],
    ['730', '07:30'],
    ['18.05', '18:05'],
    ['18h05', '18:05'],
    [' 6:30 pm ', '18:30'],
    ['6PM', '18:00'],
    ['6 p.m.', '18:00'],
    ['12:15 am', '00:15'],
    ['12 pm', '12:00'],
    ['00:00', '00:00'],
    ['23:59', '23:59'],
  ])('%s is %s', (text, clock) => expect(readClock(text)).toBe(clock));

  test.each(['', '24:00', '12:60', '13 pm', '0 am', '6:3', 'noon', '12345', '-6', '6:30:00'])(
    '"%s" is none',
    (text) => expect(readClock(text)).toBeNull(),
  );
});

import { describe, expect, it } from 'vitest';
import { hourMarks, instantAtShare, laterInDay, shareOfDay } from '../../src/time/day-share';
import { clockAt, dayOf, instantOf } from '../../src/time/local-time';

const zone = 'Europe/Zurich';
const plain = '2026-06-21';
const day = dayOf(plain, zone);

describe('a share of the day', () => {
  it('is a quarter at six on a day of 24 hours', () => {
    expect(shareOfDay(instantOf(plain, '06:00', zone), day)).toBe(0.25);
  });
  it('counts the hour that is missing when the clocks go forward', () => {
    const short = dayOf('2026-03-29', zone);
    expect(shareOfDay(instantOf('2026-03-29', '06:00', zone), short)).toBeCloseTo(5 / 23, 12);
  });
  it('is held at the ends', () => {
    expect(shareOfDay(day.from - 1, day)).toBe(0);
    expect(shareOfDay(day.to + 1, day)).toBe(1);
  });
});

describe('the instant at a share', () => {
  it('goes to whole steps', () => {
    expect(clockAt(instantAtShare(0.3031, day, 5), zone)).toBe('07:15');
  });
  it('goes back to the share that it came from', () => {
    const instant = instantOf(plain, '18:35', zone);
    expect(instantAtShare(shareOfDay(instant, day), day, 5)).toBe(instant);
  });
  it('stays within the day', () => {
    expect(clockAt(instantAtShare(1.2, day, 5), zone)).toBe('23:55');
    expect(clockAt(instantAtShare(-0.2, day, 5), zone)).toBe('00:00');
  });
});

describe('a step along the day', () => {
  it('keeps the odd minute', () => {
    expect(clockAt(laterInDay(instantOf(plain, '08:03', zone), 5, day), zone)).toBe('08:08');
  });
  it('stops at the first and the last minute', () => {
    expect(clockAt(laterInDay(instantOf(plain, '00:03', zone), -5, day), zone)).toBe('00:00');
    expect(clockAt(laterInDay(instantOf(plain, '23:58', zone), 5, day), zone)).toBe('23:59');
  });
});

it('marks the hours of the clock where they are, also over a change of the clocks', () => {
  const long = dayOf('2026-10-25', zone);
  const marks = hourMarks('2026-10-25', zone, long, 6);
  expect(marks.map((m) => m.clock)).toEqual(['00:00', '06:00', '12:00', '18:00']);
  [0, 7 / 25, 13 / 25, 19 / 25].forEach((share, i) => expect(marks[i]?.share).toBeCloseTo(share, 12));
});

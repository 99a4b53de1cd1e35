import { describe, expect, it } from 'vitest';
import { hourMarks, partOfDay, instantAtShare, laterInDay, shareOfDay } from '../../src/time/day-share';
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

describe('[T20] the light part of a day', () => {
  const at = (clock: string) => instantOf(plain, clock, zone);
  const part = (stretches: readonly [string, string][], ...instants: string[]) => {
    const days = stretches.map(([from, to]) => ({ from: at(from), to: at(to) }));
    const { from, to } = partOfDay(day, days, instants.map(at));
    return `${clockAt(from, zone)}-${clockAt(to, zone)}`;
  };
  it('goes out to the next half hours', () => {
    expect(
      part(
        [
          ['03:48', '12:00'],
          ['12:00', '21:51'],
        ],
        '08:00',
        '19:00',
      ),
    ).toBe('03:30-22:00');
    expect(part([['04:00', '21:30']])).toBe('04:00-21:30');
  });
  it('goes as far as a moment of the night', () => {
    expect(part([['03:48', '21:50']], '01:20', '19:00')).toBe('01:00-22:00');
    expect(part([['03:48', '21:50']], '08:00', '23:40')).toBe('03:30-00:00');
  });
  it('is the whole day where no light comes, and no more than the day where it never goes', () => {
    expect(part([])).toBe('00:00-00:00');
    expect(partOfDay(day, [{ from: day.from - 3_600_000, to: day.to + 1 }], [])).toEqual(day);
  });
  it('has marks for its own hours only', () => {
    const { from, to } = partOfDay(day, [{ from: at('03:48'), to: at('21:50') }], []);
    expect(hourMarks(plain, zone, { from, to }, 3).map(({ clock }) => clock)).toEqual([
      '06:00',
      '09:00',
      '12:00',
      '15:00',
      '18:00',
      '21:00',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { instantMs, isClock, isDate, readTimes } from '../../../src/survey/schema/when';

describe('[S300] dates and times of a survey exist', () => {
  it.each(['2024-02-29', '2000-02-29', '2026-12-31', '1900-01-01', '2199-12-31'])('%s is a date', (text) => {
    expect(isDate(text)).toBe(true);
  });

  it.each([
    '2026-02-30',
    '2026-02-29',
    '2100-02-29',
    '2026-04-31',
    '2026-00-10',
    '2026-13-01',
    '2026-06-00',
    '2026-6-1',
    '1899-12-31',
    '2200-01-01',
    '2026-06-21T00:00',
    ' 2026-06-21',
    '',
  ])('"%s" is none', (text) => {
    expect(isDate(text)).toBe(false);
  });

  it.each(['24:00', '23:60', '7:00', '07:00:00', '-1:00', ''])('"%s" is no time of day', (text) => {
    expect(isClock(text)).toBe(false);
  });

  // Worked by hand from the definition of ISO 8601: local time less its offset.
  it.each([
    ['2026-06-21T17:00:00Z', Date.UTC(2026, 5, 21, 17)],
    ['2026-06-21T17:00Z', Date.UTC(2026, 5, 21, 17)],
    ['2026-06-21T17:00:00+02:00', Date.UTC(2026, 5, 21, 15)],
    ['2026-06-21T23:30:00-0230', Date.UTC(2026, 5, 22, 2)],
    ['2026-06-21 17:00:00.25Z', Date.UTC(2026, 5, 21, 17, 0, 0, 250)],
  ])('%s is an instant', (text, ms) => {
    expect(instantMs(text)).toBe(ms);
  });

  it.each(['2026-02-30T10:00:00Z', '2026-06-21T24:00:00Z', '2026-06-21T17:00:00', '2026-06-21', 'now'])(
    '"%s" is none',
    (text) => {
      expect(instantMs(text)).toBeNull();
    },
  );
});

describe('[S301] the times of a recorded path are used when a speed can be taken from them', () => {
  const read = (given: unknown, positions = 3) => {
    const doubts: string[] = [];
    return { times: readTimes(given, positions, (reason) => doubts.push(reason)), doubts };
  };
  const [a, b, c] = ['2026-06-21T17:00:00Z', '2026-06-21T17:00:01Z', '2026-06-21T17:00:01Z'];

  it('reads instants that never run back', () => {
    const start = Date.UTC(2026, 5, 21, 17);
    expect(read([a, b, c])).toEqual({ times: [start, start + 1000, start + 1000], doubts: [] });
  });

  it('says nothing where there are none', () => {
    expect(read(undefined)).toEqual({ times: null, doubts: [] });
  });

  it.each([
    ['another length than the positions', [a, b], 'times: expected 3 instants, one a position, got 2'],
    ['positions without one', [a, null, null], 'times: 2 of 3 positions have no instant'],
    ['a day that is not there', [a, '2026-02-30T17:00:00Z', c], 'times: at 1, expected an instant'],
    ['a step back', [b, a, c], 'times: at 1, the instant lies before the one ahead of it'],
    ['numbers', [1, 2, 3], 'times: at 0, expected an instant'],
    ['no list', 'later', 'times: expected a list of instants, got "later"'],
  ])('%s: a doubt, and an unknown speed', (_, given, reason) => {
    const { times, doubts } = read(given);
    expect(times).toBeNull();
    expect(doubts).toHaveLength(1);
    expect(doubts[0]).toContain(reason);
    expect(doubts[0]).toContain('its speed stays unknown');
  });
});

import { describe, expect, it } from 'vitest';
import { openAt, openSpans } from '../../../src/figures/access/open-spans';
import { readOpeningHours } from '../../../src/figures/access/read-hours';

const here = { position: [18.17, 50.93], timeZone: 'Europe/Warsaw' } as const;
const open = (hours: string, instant: string, where: Parameters<typeof openAt>[2] = here) => {
  const read = readOpeningHours(hours);
  if (!read) throw new Error(`expected hours, got "${hours}"`);
  return openAt(read, Date.parse(instant), where);
};

describe('[A20] opening hours as people note them', () => {
  it.each([
    ['06:00-22:00', '2026-06-21T06:00+02:00', true],
    ['06:00-22:00', '2026-06-21T05:59+02:00', false],
    ['06:00-22:00', '2026-06-21T22:00+02:00', false],
    ['06:00 to 22:00', '2026-06-21T21:59+02:00', true],
    ['Mo-Fr 06:00-22:00', '2026-06-21T12:00+02:00', false], // a Sunday
    ['Mo-Fr 06:00-22:00', '2026-06-22T12:00+02:00', true],
    ['Fr-Mo 10:00-12:00', '2026-06-21T11:00+02:00', true],
    ['Mo-Fr 06:00-22:00, Su 14:00-16:00', '2026-06-21T15:00+02:00', true],
    ['always open', '2026-06-21T03:00+02:00', true],
  ])('%s at %s: %s', (hours, instant, expected) => {
    expect(open(hours, instant)).toBe(expected);
  });

  it('past midnight belongs to the evening on which it began', () => {
    expect(open('Fr 20:00-02:00', '2026-06-20T01:00+02:00')).toBe(true); // Saturday, one in the morning
    expect(open('Fr 20:00-02:00', '2026-06-19T01:00+02:00')).toBe(false); // Friday, one in the morning
  });

  it('a lane that is open from sunrise to sunset is long open in June and short in December', () => {
    expect(open('sunrise-sunset', '2026-06-21T05:00+02:00')).toBe(true);
    expect(open('sunrise-sunset', '2026-12-21T07:00+01:00')).toBe(false);
    expect(open('sunrise-sunset', '2026-12-21T12:00+01:00')).toBe(true);
  });

  it('where the sun does not rise it is shut, where it does not set it is open', () => {
    const north = { position: [18.95, 69.65], timeZone: 'Europe/Oslo' } as const;
    expect(open('sunrise-sunset', '2026-12-21T12:00+01:00', north)).toBe(false);
    expect(open('sunrise-sunset', '2026-06-21T01:00+02:00', north)).toBe(true);
  });

  it('the night in which the clocks go back is an hour longer', () => {
    const spans = openSpans(readOpeningHours('22:00-06:00') ?? [], '2026-10-24', here);
    expect(spans.map(({ from, to }) => (to - from) / 3_600_000)).toEqual([9]);
  });

  it.each([
    'daily till dusk',
    '25:00-26:00',
    '06:00',
    'Mo-Xx 06:00-07:00',
    '06:00-22:00; shut in winter',
    '',
  ])('what cannot be read is no hours: "%s"', (text) => {
    expect(readOpeningHours(text)).toBeNull();
  });
});

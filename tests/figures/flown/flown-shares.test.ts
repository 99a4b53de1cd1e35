import { describe, expect, it } from 'vitest';
import { flownShares } from '../../../src/figures/flown/flown-shares';
import type { EndUse } from '../../../src/figures/flown/end-uses';

const end = (index: 0 | 1) =>
  ({ ref: { runway: 'r', end: index }, name: index === 0 ? '06' : '24' }) as never;
const ends = [end(0), end(1)];
const used = (kind: EndUse['kind'], index: 0 | 1, at: string | null): EndUse => ({
  runway: 'r',
  end: index,
  kind,
  instant: at === null ? null : Date.parse(at),
});
const june18 = 5 * 24 + 18;
const shareOf = (found: ReturnType<typeof flownShares>, use: string, index: 0 | 1, at: number) => {
  const entry = found?.shares.ends.find((e) => e.use === use && e.end.ref.end === index);
  return (entry?.counts[at] ?? 0) / (found?.shares.observations[at] ?? 1);
};

describe('[F732] what was really used, by hour', () => {
  it('arrivals are a share of arrivals, departures of departures, by the airfield’s clock', () => {
    const found = flownShares(
      [
        ...[1, 2, 3].map((m) => used('arrival', 1, `2026-06-21T16:0${m}:00Z`)),
        used('arrival', 0, '2026-06-22T16:30:00Z'),
        used('departure', 0, '2026-06-22T16:40:00Z'),
      ],
      ends,
      'Europe/Warsaw',
    );
    expect(found?.flights).toBe(5);
    expect(shareOf(found, 'arrivals', 1, june18)).toBeCloseTo(3 / 4, 12);
    expect(shareOf(found, 'arrivals', 0, june18)).toBeCloseTo(1 / 4, 12);
    expect(shareOf(found, 'departures', 0, june18)).toBeCloseTo(1, 12);
  });

  it('a circuit lands and leaves', () => {
    const found = flownShares([used('circuit', 1, '2026-06-21T16:00:00Z')], ends, 'Europe/Warsaw');
    expect(shareOf(found, 'arrivals', 1, june18)).toBe(1);
    expect(shareOf(found, 'departures', 1, june18)).toBe(1);
  });

  it('flights without times say nothing of hours', () => {
    expect(flownShares([used('arrival', 1, null)], ends, 'Europe/Warsaw')).toBeNull();
  });

  it('an hour in which they only landed takes its month’s departures: none is no share of nothing', () => {
    const found = flownShares(
      [
        used('arrival', 1, '2026-06-21T16:00:00Z'),
        used('departure', 1, '2026-06-21T12:00:00Z'),
        used('departure', 1, '2026-06-21T12:30:00Z'),
        used('departure', 0, '2026-06-22T12:30:00Z'),
      ],
      ends,
      'Europe/Warsaw',
    );
    expect(shareOf(found, 'departures', 1, june18)).toBeCloseTo(2 / 3, 12);
    expect(shareOf(found, 'arrivals', 1, 5 * 24 + 14)).toBe(1);
  });
});

import { describe, expect, test } from 'vitest';
import { clockAt, dateAt } from '../../src/time/local-time';
import { clockOf, yearGrid } from '../../src/time/year-grid';

describe('a year of wall-clock times', () => {
  test.each([
    [2026, 'Europe/Warsaw', 365],
    [2028, 'America/New_York', 366],
    [2026, 'Australia/Lord_Howe', 365],
    [2026, 'Africa/Cairo', 365],
  ])('[T12] %s in %s: every instant shows the date and time of its place', (year, zone, days) => {
    const { dates, rows, instants } = yearGrid(year, zone, 15);
    expect([dates.length, rows, instants.length]).toEqual([days, 96, days * 96]);
    expect([dates[0], dates.at(-1)]).toEqual([`${year}-01-01`, `${year}-12-31`]);
    const changes = dates.flatMap((date, d) =>
      instants.subarray(d * 96, d * 96 + 96).some(Number.isNaN) ? [d] : [],
    );
    const some = dates.flatMap((_, d) => (d % 30 === 0 || changes.includes(d) ? [d] : []));
    for (const d of some) {
      for (let r = 0; r < rows; r++) {
        const instant = instants[d * rows + r] as number;
        if (Number.isNaN(instant)) continue;
        expect(`${dateAt(instant, zone)} ${clockAt(instant, zone)}`).toBe(`${dates[d]} ${clockOf(r * 15)}`);
      }
    }
  });

  test('[T13] leaves out the hour that the clocks skip, and takes the first of the one that comes twice', () => {
    const { dates, instants } = yearGrid(2026, 'Europe/Warsaw', 15);
    const missing = [...instants.keys()].filter((i) => Number.isNaN(instants[i]));
    expect(missing.map((i) => `${dates[Math.floor(i / 96)]} ${clockOf((i % 96) * 15)}`)).toEqual(
      ['02:00', '02:15', '02:30', '02:45'].map((clock) => `2026-03-29 ${clock}`),
    );
    const october = dates.indexOf('2026-10-25') * 96;
    expect(instants[october + 10]).toBe(Date.parse('2026-10-25T02:30:00+02:00'));
    expect(instants[october + 12]).toBe(Date.parse('2026-10-25T03:00:00+01:00'));
    expect(yearGrid(2026, 'Australia/Lord_Howe', 15).instants.filter(Number.isNaN)).toHaveLength(2);
  });
});

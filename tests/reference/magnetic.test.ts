import { describe, expect, test, vi } from 'vitest';
import { suggestedDesignator } from '../../src/figures/geometry/designator';
import { destination } from '../../src/figures/geometry/earth';
import { declination } from '../../src/figures/geometry/magnetic';
import { runwayFigures } from '../../src/figures/runway-figures';
import { contentsOf, runwayFeature } from '../support/contents';
import { PublishedTable } from '../support/tolerance';
import {
  declinationRows,
  declinationSource,
  designatorRows,
  designatorSource,
  endToEndRows,
  endToEndSource,
  wmmFileRows,
  wmmFileSource,
  wmmTable6Rows,
  wmmTable6Source,
} from './fixtures/magnetic';
import { tolerances } from './tolerances';

/** A decimal year as the instant that the coefficients' authors mean: years of 365 days, or 366. */
function instantOfYear(year: number): number {
  const whole = Math.floor(year);
  const from = Date.UTC(whole, 0, 1);
  return from + (year - whole) * (Date.UTC(whole + 1, 0, 1) - from);
}

describe('declination by the World Magnetic Model 2025', () => {
  test.each([
    ['[R20]', 'WMM2025 Table 6', wmmTable6Source, wmmTable6Rows, 12],
    ['[R21]', 'WMM2025 test values', wmmFileSource, wmmFileRows, 20],
  ] as const)('%s %s', (_rule, name, source, rows, count) => {
    const table = new PublishedTable(`${name} (${source})`, { declination: tolerances.publishedDeclination });
    for (const row of rows) {
      table.row(`${row.year}, ${row.lat}, ${row.lng}`);
      const got = declination([row.lng, row.lat], row.km * 1000, instantOfYear(row.year));
      table.nearAngle('declination', got, row.declination);
    }
    table.close(count);
  });

  test('[R22] at places', () => {
    const table = new PublishedTable(`declination at places (${declinationSource})`, {
      declination: tolerances.declination,
    });
    for (const row of declinationRows) {
      table.row(row.place);
      const got = declination([row.lng, row.lat], row.km * 1000, Date.parse(row.at));
      table.nearAngle('declination', got, row.declination);
    }
    table.close(10);
  });

  test('[R23] the model answers to its last day, where the library stops in November 2029', () => {
    // The library says on the console that it is out of its own bounds.
    const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const at = (iso: string) => declination([8.5492, 47.4647], 432, Date.parse(iso));
    const [before, after, last] = [at('2029-11-12T00:00Z'), at('2029-11-14T00:00Z'), at('2029-12-31T23:00Z')];
    // The field drifts here by about a tenth of a degree a year.
    expect(Math.abs(after - before)).toBeLessThan(0.01);
    expect(Math.abs(last - before)).toBeLessThan(0.05);
    expect(last).not.toBe(before);
    said.mockRestore();
  });
});

describe('designators', () => {
  test('[R24] the rule at its edges', () => {
    expect(designatorSource).toContain('5.2.2.4');
    expect(designatorRows).toHaveLength(13);
    for (const { azimuth, allowed } of designatorRows)
      expect(allowed, `magnetic azimuth ${azimuth}`).toContain(suggestedDesignator(azimuth));
    const all = new Set(Array.from({ length: 7200 }, (_, i) => suggestedDesignator(i / 20)));
    expect([...all].sort()).toEqual(Array.from({ length: 36 }, (_, i) => String(i + 1).padStart(2, '0')));
  });

  test('[R25] from a drawn runway to both designators', () => {
    const table = new PublishedTable(`designators end to end (${endToEndSource})`, {
      declination: tolerances.declination,
      magnetic: tolerances.magneticBearing,
    });
    const at = Date.parse('2026-06-15T00:00:00Z');
    for (const row of endToEndRows) {
      table.row(row.near);
      const a = [row.lng, row.lat] as const;
      const b = destination(a, row.bearing, 3000);
      const contents = contentsOf([runwayFeature('rwy', a, b, [{}, {}])], {
        site: { elevation: row.height },
      });
      const runway = contents.runways[0];
      const figures = runway && runwayFigures(runway, row.height, at);
      if (!figures) throw new Error('expected the figures of a runway');
      table.nearAngle('declination', figures.declination, row.declination);
      table.nearAngle('magnetic', figures.ends[0].magneticBearing, row.magnetic);
      expect(
        figures.ends.map((e) => e.suggestedDesignator),
        row.near,
      ).toEqual(row.designators);
    }
    table.close(8);
  });
});

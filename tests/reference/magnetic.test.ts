import { describe, expect, test, vi } from 'vitest';
import { suggestedDesignator } from '../../src/figures/geometry/designator';
import { destination } from '../../src/figures/geometry/earth';
import { declination } from '../../src/figures/geometry/magnetic';
import { runwayFigures } from '../../src/figures/runway-figures';
import { contentsOf, runwayFeature } from '../support/contents';
import { PublishedTable } from '../support/tolerance';
import {
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

  test('[R23] the model answers to its last day without a word, where the library stops in November 2029', () => {
    const said = vi.spyOn(console, 'error');
    const at = (iso: string, lng = 8.5492, lat = 47.4647) => declination([lng, lat], 432, Date.parse(iso));
    const [before, after, last] = [at('2029-11-11T23:00Z'), at('2029-11-12T01:00Z'), at('2029-12-31T23:00Z')];
    // The field drifts here by about a tenth of a degree a year, near the pole by far more.
    expect(Math.abs(after - before)).toBeLessThan(0.001);
    expect(last - after).toBeGreaterThan(0.005);
    expect(last - after).toBeLessThan(0.05);
    const polar = (iso: string) => at(iso, 139, 84);
    const drift = polar('2029-11-11T00:00Z') - polar('2029-09-22T00:00Z');
    expect(polar('2029-12-31T00:00Z') - polar('2029-11-11T00:00Z')).toBeCloseTo(drift, 1);
    expect(said).not.toHaveBeenCalled();
    said.mockRestore();
  });

  test('[R26] years without a model take the nearest day that has one, without a word', () => {
    const said = vi.spyOn(console, 'error');
    const at = (iso: string) => declination([8.5492, 47.4647], 432, Date.parse(iso));
    for (const iso of ['1871-05-05T00:00Z', '2014-12-31T23:59Z'])
      expect(at(iso), iso).toBe(at('2015-01-01T00:00Z'));
    for (const iso of ['2030-01-01T00:00Z', '2300-05-05T00:00Z'])
      expect(at(iso), iso).toBeCloseTo(at('2029-12-31T23:59Z'), 4);
    for (const day of ['2018-09-18', '2019-12-10', '2023-09-15', '2024-11-13', '2024-12-10'])
      expect(at(`${day}T00:00Z`)).toBeCloseTo(at(`${day}T23:59Z`), 6);
    expect(said).not.toHaveBeenCalled();
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

  test('[R25] from a drawn runway to both designators: the chain, with the declination of the model that R20 and R21 check', () => {
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

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../src/figures/figures-for';
import { readGeotiff } from '../../../src/imports/terrain/read-geotiff';
import { readContents } from '../../../src/survey/contents';
import { openSurvey } from '../../../src/survey/open';
import { sampleGrid, sampleHeights } from '../../support/sample-terrain';

const read = (name: string) => readFileSync(new URL(`../../../sample-sites/${name}`, import.meta.url));
const opened = openSurvey(read('tolverby.geojson').toString('utf8'));
if (!opened.ok) throw new Error(opened.reason);
const contents = readContents(opened.survey);
const reading = await readGeotiff(
  new Uint8Array(read('tolverby-terrain.tif')).buffer,
  contents.site.reference,
);
if (!reading.ok) throw new Error(reading.reason);
const { grid } = reading;

describe("the sample site's ground", () => {
  test('[F180] is the one that is made up, to the decimetre', () => {
    const made = sampleHeights();
    expect([grid.columns, grid.rows]).toEqual([sampleGrid.columns, sampleGrid.rows]);
    expect(grid.west).toBeCloseTo(sampleGrid.west, 9);
    expect(grid.north).toBeCloseTo(sampleGrid.north, 9);
    expect(made.every((height, i) => Math.abs(height - (grid.heights[i] ?? NaN)) < 1e-4)).toBe(true);
  });

  test('[F181] leaves the five spots what they are: nothing of a runway is hidden by it', () => {
    for (const hour of [6, 17]) {
      const [flat, hilly] = [null, grid].map((terrain) =>
        figuresFor(contents, Date.UTC(2026, 5, 21, hour), terrain),
      );
      hilly?.spots.forEach((spot, i) => {
        const before = flat?.spots[i];
        expect(Math.abs(spot.ground - (before?.ground ?? NaN)), spot.name).toBeLessThan(6);
        spot.paths.forEach((path, k) => {
          if (path.ref.kind === 'taxi' || path.ref.kind === 'parked') return;
          const total = before?.paths[k]?.best.score.total ?? NaN;
          expect(Math.abs(path.best.score.total - total), `${spot.name} ${path.ref.path}`).toBeLessThan(0.03);
        });
      });
      expect(hilly?.spots.map((s) => s.groundFrom)).toContain('terrain');
    }
  });
});

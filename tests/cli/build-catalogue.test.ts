import { readFile, stat } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildCatalogue, cataloguePath } from '../../src/cli/build-catalogue';
import { isLocated } from '../../src/imports/catalogue/doubts';
import { searchCatalogue } from '../../src/imports/catalogue/search';
import { surveyFromAirfield } from '../../src/imports/catalogue/survey-from-airfield';
import type { Airfield, Catalogue } from '../../src/imports/catalogue/types';
import { timeZoneAt } from '../../src/imports/time-zone';
import { readContents } from '../../src/survey/contents';
import { everyAirfield, realCatalogue } from '../support/catalogue';

describe('the catalogue of the open data', () => {
  let catalogue: Catalogue;
  let airfields: Airfield[];
  beforeAll(async () => {
    catalogue = await realCatalogue();
    airfields = everyAirfield(catalogue);
  }, 60_000);

  const first = (text: string) => searchCatalogue(catalogue, text, 10)[0]?.airfield;

  it('[C9] holds every kind of airfield, located or not', () => {
    // Counts of data package 0.2.1, without closed airfields, balloonports, pads without a code, second entries.
    expect(airfields).toHaveLength(46_183);
    expect(airfields.filter((a) => a.runways.some(isLocated)).length).toBe(9_686);
  });

  it('[C9] is small enough to be fetched on the way', async () => {
    const packed = gzipSync(await readFile(cataloguePath), { level: 9 }).length;
    expect(packed).toBeLessThan(1_200_000);
  });

  it('[C9] is not written again while it is up to date', async () => {
    const before = (await stat(cataloguePath)).mtimeMs;
    expect(await buildCatalogue()).toEqual({ built: false });
    expect((await stat(cataloguePath)).mtimeMs).toBe(before);
  });

  it.each([
    ['EGLL', 'GB'],
    ['lhr', 'GB'],
    ['heathrow', 'GB'],
    ['zürich', 'CH'],
    ['lodz', 'PL'],
    ["o'hare", 'US'],
    ['new york kennedy', 'US'],
    ['sydney kingsford', 'AU'],
  ])('[C3] finds %s (%s)', (text, country) => {
    expect(first(text)).toMatchObject({ kind: 'large-airport', country });
  });

  it('[C4] starts a survey of every airfield that opens without a problem', () => {
    let id = 0;
    const wrong: string[] = [];
    for (const airfield of airfields) {
      const { survey, doubts } = surveyFromAirfield(airfield, () => `r${id++}`, 'UTC');
      const { problems, runways } = readContents(survey);
      if (problems.length > 0) wrong.push(`${airfield.name}: ${problems[0]?.reason ?? ''}`);
      if (runways.length === 0 && doubts.length === 0)
        wrong.push(`${airfield.name}: nothing drawn, nothing said`);
    }
    expect(wrong).toEqual([]);
  });

  it('[C4] a large airfield comes with thresholds and elevations in metres', async () => {
    const heathrow = first('EGLL');
    expect(heathrow).toBeDefined();
    if (!heathrow) return;
    const { timeZone } = await timeZoneAt(heathrow.position);
    const { runways, site } = readContents(surveyFromAirfield(heathrow, () => 'r', timeZone).survey);
    expect(site).toMatchObject({ icao: 'EGLL', timeZone: 'Europe/London' });
    expect(site.elevation).toBeCloseTo(25.3, 1);
    const southern = runways.find((r) => r.name === '09R/27L');
    expect(southern?.ends[0]).toMatchObject({ designator: '09R', displaced: 308.76, elevation: 22.86 });
    expect(southern?.line[0][0]).toBeLessThan(southern?.line[1][0] ?? -180);
  });
});

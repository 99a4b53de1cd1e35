import { readFile, stat } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildCatalogue, cataloguePaths } from '../../src/cli/build-catalogue';
import { isLocated } from '../../src/imports/catalogue/doubts';
import { searchCatalogue } from '../../src/imports/catalogue/search';
import { surveyFromAirfield } from '../../src/imports/catalogue/survey-from-airfield';
import { timeZoneAt } from '../../src/imports/time-zone';
import { readContents } from '../../src/survey/contents';
import { everyAirfield, realCatalogue, type WholeAirfield, type WholeCatalogue } from '../support/catalogue';
import { thorough } from '../support/thorough';

describe('the catalogue of the open data', () => {
  let whole: WholeCatalogue;
  let airfields: WholeAirfield[];
  beforeAll(async () => {
    whole = await realCatalogue();
    airfields = everyAirfield(whole);
  }, 60_000);

  /** The airfield found first, with what the other files say of it. */
  const first = (text: string) =>
    airfields[searchCatalogue(whole.catalogue, text, 10)[0]?.airfield.index ?? -1];

  it('[C9] holds every kind of airfield, located or not', () => {
    // Counts of data package 0.2.1, without closed airfields, balloonports, pads without a code, second entries.
    expect(airfields).toHaveLength(46_183);
    expect(airfields.filter((a) => a.runways.some(isLocated)).length).toBe(9_686);
  });

  it('[C9] is small enough to be fetched on the way', async () => {
    const packed = async (path: string) => gzipSync(await readFile(path), { level: 9 }).length;
    const [catalogue, runways, frequencies] = await Promise.all(
      [cataloguePaths.catalogue, cataloguePaths.runways, cataloguePaths.frequencies].map(packed),
    );
    expect(catalogue).toBeLessThan(780_000);
    expect((catalogue ?? 0) + (runways ?? 0) + (frequencies ?? 0)).toBeLessThan(1_000_000);
  });

  it('[C9] counts with each airfield the runways that the other file has', () => {
    const off = airfields.filter(
      ({ runways, runwayCount, locatedCount }) =>
        runways.length !== runwayCount || runways.filter(isLocated).length !== locatedCount,
    );
    expect(off).toEqual([]);
  });

  it('[C9] is not written again while it is up to date', async () => {
    const before = (await stat(cataloguePaths.catalogue)).mtimeMs;
    expect(await buildCatalogue()).toEqual({ built: false });
    expect((await stat(cataloguePaths.catalogue)).mtimeMs).toBe(before);
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

  it('[C4] starts a survey of an airfield that opens without a problem: of every one in npm run thorough', () => {
    let id = 0;
    const wrong: string[] = [];
    const looked = thorough ? airfields : airfields.filter((_, i) => i % 20 === 0);
    for (const airfield of looked) {
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

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readContents } from '../../src/survey/contents';
import { surveyVersion } from '../../src/survey/document';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';

const folder = new URL('../files/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.geojson'));

describe('surveys of every released version', () => {
  test('[S63] there is one for each version', () => {
    const wanted = Array.from({ length: surveyVersion }, (_, i) => `version-${i + 1}.geojson`);
    expect(files).toEqual(expect.arrayContaining(wanted));
  });

  test.each(files)('[S64] %s opens without a problem, and nothing in it is set aside', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const result = openSurvey(text);
    if (!result.ok) throw new Error(result.reason);
    expect(result.problems).toEqual([]);
    expect(result.newer).toBe(false);
    const contents = readContents(result.survey);
    expect(contents.problems).toEqual([]);
    const stated = (JSON.parse(text) as { sunside: { version: number } }).sunside.version;
    expect(name).toBe(`version-${stated}.geojson`);
    if (stated === surveyVersion) expect(saveSurvey(result.survey)).toBe(text);
  });

  test('[S65] version 1 means what it meant', () => {
    const result = openSurvey(readFileSync(new URL('version-1.geojson', folder), 'utf8'));
    if (!result.ok) throw new Error(result.reason);
    const contents = readContents(result.survey);
    expect(contents.site).toMatchObject({ name: 'Grauwald', elevation: 431, timeZone: 'Europe/Zurich' });
    expect(contents.site.frequencies).toEqual([{ use: 'tower', name: 'Grauwald tower', mhz: 118.125 }]);
    expect(contents.moments).toMatchObject({ date: '2026-06-21', a: '08:30', b: '19:00' });
    expect(contents.runways[0]?.ends).toMatchObject([
      { designator: '13', elevation: 430, displaced: 150, glide: 3.5, crossingHeight: 12, circuit: 'right' },
      { designator: '31', elevation: 433, displaced: 0, closed: true, circuit: 'left' },
    ]);
    expect(contents.spots[0]).toMatchObject({
      eyeHeight: 11,
      ground: 429,
      access: { status: 'ask', contact: 'gate house', ladder: false, hours: null },
    });
    expect(contents.obstacles.map((o) => [o.sight, o.height, o.base])).toEqual([
      ['solid', 14, null],
      ['mesh', 2.4, null],
      ['leaf', 18, 428],
    ]);
    expect(contents.noGoAreas[0]?.reason).toBe('cable');
    expect(contents.aprons[0]?.heading).toBe(220);
    expect(contents.taxiRoutes[0]?.name).toBe('A');
    expect(contents.flightPaths[0]?.heights).toEqual([600, 460, 560]);
    expect([contents.subject.key, contents.body.key, contents.kit.fill]).toEqual(['trainer', 'crop', 0.75]);
    expect(contents.lenses.map((l) => [l.key, l.extenders])).toEqual([['long', [1.4]]]);
    expect(contents.configurations[0]).toMatchObject({
      name: 'south-east',
      departures: [{ runway: 'rwy', end: 0 }],
    });
  });
});

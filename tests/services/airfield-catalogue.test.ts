import { afterEach, expect, test, vi } from 'vitest';
import type { NewSurvey } from '../../src/ports/files';
import { AirfieldCatalogue } from '../../src/services/airfield-catalogue';
import type { NoticeLife } from '../../src/state/view.svelte';
import { encodeCatalogue } from '../../src/imports/catalogue/encode';
import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { invented, source } from '../imports/catalogue/airfields';

test('[U18] a survey without a runway asks for one until the first is drawn', async () => {
  let survey: Survey | null = null;
  let said: string | null = null;
  let life: NoticeLife | undefined;
  const catalogue = new AirfieldCatalogue({
    files: {
      start: async (make) => {
        const made = await make();
        [survey, said, life] = [made.survey, made.notice, made.life];
      },
    },
    now: () => Date.UTC(2026, 5, 21, 12),
  });
  await catalogue.startEmpty('', [18.17, 50.93]);
  expect(said).toMatch(/^A new survey\. Draw its first runway/);
  const empty = survey as unknown as Survey;
  expect(life?.holds(empty)).toBe(true);
  const place = { type: 'Point', coordinates: [18.17, 50.93] } as const;
  expect(life?.holds(addFeature(empty, 's', 'standing-spot', place, {}))).toBe(true);
  const line = {
    type: 'LineString',
    coordinates: [
      [18.17, 50.93],
      [18.18, 50.93],
    ],
  } as const;
  expect(life?.holds(addFeature(empty, 'r', 'runway', line, {}))).toBe(false);
});

afterEach(() => vi.unstubAllGlobals());

/** A server of the catalogue's files; those in `missing` cannot be reached. */
function serve(missing: Set<string>): string[] {
  const files = new Map(
    Object.entries(encodeCatalogue(invented, source, 'tests')).map(([name, file]) => [
      `./${name}.json`,
      JSON.stringify(file),
    ]),
  );
  const asked: string[] = [];
  vi.stubGlobal('fetch', (url: string) => {
    asked.push(url);
    return missing.has(url)
      ? Promise.reject(new TypeError('Failed to fetch'))
      : Promise.resolve(new Response(files.get(url)));
  });
  return asked;
}

async function startFirst(missing: Set<string>) {
  const asked = serve(missing);
  const started: NewSurvey[] = [];
  const catalogue = new AirfieldCatalogue({
    files: { start: async (make) => void started.push(await make()) },
    now: () => Date.UTC(2026, 5, 21, 12),
  });
  expect(await catalogue.load()).toBe(null);
  const [match] = catalogue.search('EGXQ');
  if (!match) throw new Error('expected the invented airfield');
  const again = async () => {
    await catalogue.start(match);
    return started.at(-1);
  };
  return { asked, again, match };
}

test('[C14] a search needs one file; runways come while somebody types, frequencies when a survey starts', async () => {
  const { asked, again, match } = await startFirst(new Set());
  expect(asked).toEqual(['./catalogue.json', './runways.json']);
  expect(match).toMatchObject({ code: 'EGXQ', locatedRunways: 1, runways: 1 });
  const started = await again();
  expect(started?.survey.features).toHaveLength(1);
  expect(started?.survey.sunside['site']).toHaveProperty('frequencies');
  expect(started?.notice).toBe(null);
  await again();
  expect(asked).toEqual(['./catalogue.json', './runways.json', './frequencies.json']);
});

test('[C14] what could not be loaded is said, and asked for again at the next start', async () => {
  const missing = new Set(['./runways.json', './frequencies.json']);
  const { again } = await startFirst(missing);
  const without = await again();
  expect(without?.survey.features).toEqual([]);
  expect(without?.notice).toMatch(/runways could not be loaded.*frequencies could not be loaded/);
  missing.clear();
  const whole = await again();
  expect(whole?.survey.features).toHaveLength(1);
  expect(whole?.notice).toBe(null);
});

import { expect, test } from 'vitest';
import { AirfieldCatalogue } from '../../src/services/airfield-catalogue';
import type { NoticeLife } from '../../src/state/view.svelte';
import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';

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

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { onePage } from './page';

const opened = onePage({ map: false });

const name = (page: Page) => page.getByLabel('Name of the survey');

async function open(page: Page, file: { name: string; text: string }): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({
    name: file.name,
    mimeType: 'application/geo+json',
    buffer: Buffer.from(file.text),
  });
}

async function saved(page: Page): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

const runway = {
  type: 'Feature',
  id: 'r1',
  properties: { kind: 'runway', ends: [{ designator: '09' }, { designator: '27' }] },
  geometry: {
    type: 'LineString',
    coordinates: [
      [8.5, 47.5],
      [8.53, 47.5],
    ],
  },
};
const survey = (siteName: string, features: unknown[] = [runway]) =>
  JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1, site: { name: siteName } }, features });

describe('keeping a survey', () => {
  it('[B40] saves GeoJSON that opens again as the same bytes, unknown members included', async () => {
    const { page, complaints } = opened;
    const strange = {
      ...runway,
      id: 'w1',
      properties: { kind: 'windsock', colours: ['red', 'white'] },
      note: { a: [1] },
    };
    await open(page, { name: 'strange.geojson', text: survey('Strangefield', [runway, strange]) });
    await expect.poll(() => name(page).inputValue()).toBe('Strangefield');
    const first = await saved(page);
    expect(first.name).toBe('strangefield.geojson');
    const features = (JSON.parse(first.text) as { features: unknown[] }).features;
    expect(features).toContainEqual(strange);
    await open(page, first);
    await expect.poll(() => name(page).inputValue()).toBe('Strangefield');
    expect((await saved(page)).text).toBe(first.text);
    expect(complaints).toEqual([]);
  });

  it('[B41] is there again after a reload, as it was left', async () => {
    const { page } = opened;
    await name(page).fill('Left like this');
    await name(page).press('Enter');
    await expect.poll(() => page.locator('body').innerText()).toContain('Kept on this device');
    await page.reload();
    await name(page).waitFor();
    await expect.poll(() => name(page).inputValue()).toBe('Left like this');
  });

  it.each([
    ['empty', '', /empty/],
    ['no JSON', '{"type": "FeatureCollection",\n "features": [}', /line 2, column/],
    ['other GeoJSON', '{"type": "Point", "coordinates": [8, 47]}', /FeatureCollection/],
  ])(
    '[B42] a file that is %s is refused with the place, and the open survey stays',
    async (_, text, reason) => {
      const { page } = opened;
      await open(page, { name: 'broken.geojson', text });
      await expect.poll(() => page.locator('body').innerText()).toMatch(reason);
      await expect.poll(() => name(page).inputValue()).toBe('Tolverby');
    },
  );

  it('[B43] uses the features that can be used and lists the rest', async () => {
    const { page } = opened;
    const far = {
      ...runway,
      id: 'far',
      geometry: {
        type: 'LineString',
        coordinates: [
          [8.5, 147],
          [8.53, 47.5],
        ],
      },
    };
    await open(page, { name: 'half.geojson', text: survey('Half', [runway, far]) });
    await page.getByRole('heading', { name: 'Runways 1' }).waitFor();
    await expect.poll(() => page.locator('body').innerText()).toMatch(/could not be used. Nothing is lost/);
    await page
      .getByText(/\d problems?/)
      .first()
      .click();
    await expect.poll(() => page.locator('body').innerText()).toMatch(/latitude 147 is not within ±90/);
    expect((JSON.parse((await saved(page)).text) as { features: unknown[] }).features).toHaveLength(2);
  });

  it('[B44] shows a survey of a newer version, and changes nothing in it', async () => {
    const { page } = opened;
    const text = JSON.stringify({
      type: 'FeatureCollection',
      sunside: { version: 99, site: { name: 'Later' } },
      features: [runway],
    });
    await open(page, { name: 'later.geojson', text });
    await expect.poll(() => page.locator('body').innerText()).toMatch(/newer/);
    await expect
      .poll(
        async () => (await name(page).isDisabled()) || (await name(page).getAttribute('readonly')) !== null,
      )
      .toBe(true);
  });

  it('[B45] takes a dropped file', async () => {
    const { page } = opened;
    const transfer = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'dropped.geojson', { type: 'application/geo+json' }));
      return data;
    }, survey('Dropped'));
    await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
    await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
    await expect.poll(() => name(page).inputValue()).toBe('Dropped');
  });
});

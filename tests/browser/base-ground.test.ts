import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { plainKit, plainSubject, runwayFeature, surveyText } from '../support/contents';
import { thorough } from '../support/thorough';
import { TileServer } from '../support/tile-server';
import { onePage } from './page';

/** A runway and nothing else: where one may walk, the map is to say. */
const survey = surveyText(
  [
    runwayFeature(
      'main',
      [18.16, 50.928],
      [18.174, 50.929],
      [
        { designator: '08', elevation: 180 },
        { designator: '26', elevation: 180 },
      ],
    ),
  ],
  {
    subjects: [plainSubject],
    kit: plainKit,
    site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 180, reference: [18.167, 50.9285] },
    moments: { date: '2026-06-21', a: '08:00', b: '08:30' },
  },
);

const server = new TileServer();
beforeAll(() => server.start());
afterAll(() => server.die());

const opened = onePage({ width: 1440, height: 900 });
const view = (page: Page) => page.getByRole('region', { name: 'Where to stand' });
const done = (page: Page) => page.locator('section.places[data-busy="false"]').waitFor({ timeout: 60_000 });
const places = (page: Page) =>
  view(page).getByRole('list', { name: 'Places to stand, best first' }).getByRole('listitem').allInnerTexts();

it.skipIf(!thorough)(
  '[B990] ground from a vector base map: the list names its ways, its credit stays, and one undo takes it back (npm run thorough)',
  async () => {
    const { page } = opened;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'field.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(survey),
    });
    await page.getByRole('button', { name: 'Base map', exact: true }).click();
    const dialog = page.getByRole('dialog', { name: 'Base map' });
    await page.getByText('Add a map of your own').click();
    await dialog.getByLabel('Kind').selectOption('style');
    await dialog.getByLabel('Name').fill('Town');
    await dialog.getByLabel('Address').fill(`${server.origin}/town-style.json`);
    await dialog.getByRole('button', { name: 'Add', exact: true }).click();
    await dialog.getByText('It is in the list now').waitFor();
    await page.keyboard.press('Escape');
    const map = page.locator('[data-base]');
    await expect.poll(() => map.getAttribute('data-base'), { timeout: 30_000 }).toBe('shown');

    await page.getByRole('button', { name: 'Where to stand' }).click();
    await view(page).getByLabel('Hours').selectOption('moments');
    await done(page);
    expect((await places(page)).every((place) => /check first/.test(place))).toBe(true);
    const zoomOf = async () => Number(await page.locator('[data-zoom]').getAttribute('data-zoom'));
    while ((await zoomOf()) < 14) {
      const zoom = await zoomOf();
      await page.getByRole('button', { name: 'Zoom in' }).click();
      await expect.poll(zoomOf).toBeGreaterThan(zoom + 0.99);
    }
    await expect.poll(() => server.asked.some((path) => path.startsWith('/town/14/'))).toBe(true);
    await expect.poll(() => map.getAttribute('data-base'), { timeout: 30_000 }).toBe('shown');

    // What the screen has not loaded yet is not there: asked again until it is.
    const take = view(page).getByRole('button', { name: 'Take ground from the base map' });
    await expect
      .poll(
        async () => {
          await take.click();
          return view(page).innerText();
        },
        { timeout: 30_000 },
      )
      .toMatch(/pieces? of ground brought in/i);
    await done(page);
    await expect.poll(async () => (await places(page)).join('\n'), { timeout: 60_000 }).toMatch(/Pond Lane/);
    await expect.poll(() => page.locator('.credit').innerText()).toContain('Invented town office');

    await page.getByRole('button', { name: 'Undo' }).click();
    await done(page);
    await expect
      .poll(async () => (await places(page)).join('\n'), { timeout: 60_000 })
      .not.toMatch(/Pond Lane/);
    expect(opened.complaints).toEqual([]);
  },
  120_000,
);

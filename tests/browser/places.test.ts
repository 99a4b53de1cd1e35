import { describe, expect, it } from 'vitest';
import { onePage, pixelOf } from './page';

// A small page: its map is drawn by the processor that is to search.
const opened = onePage({ width: 1024, height: 720 });
/** ms: a search has both cores to itself, or a busy machine. */
const patient = 150_000;

const view = () => opened.page.getByRole('region', { name: 'Where to stand' });
const lines = () => view().getByRole('list', { name: 'Places to stand, best first' }).getByRole('listitem');
const spots = () =>
  opened.page.locator('.sheet.left').getByRole('button', {
    name: /^(Mill Lane|Orchard Path|Public way|Beacon Path|Northway|Open country|Car park$)/,
  });

/** Few instants, so that the machine of a test has an answer soon: between moments that lie half an hour apart. */
async function open(): Promise<void> {
  const { page } = opened;
  await page.getByLabel('B', { exact: true }).fill('08:30');
  await page.getByLabel('B', { exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Where to stand' }).click();
  await view().getByLabel('Hours').selectOption('moments');
}
const fineness = () => view().evaluate((section) => Number((section as HTMLElement).dataset['fineness']));
const zoomOf = async () => Number(await opened.page.locator('[data-zoom]').getAttribute('data-zoom'));
const done = () => opened.page.locator('section.places[data-busy="false"]').waitFor({ timeout: patient });

describe('where to stand, on the sample site', () => {
  // One search for all of it: it is most of what this takes.
  it(
    '[B260] [B261] coarse first and then finer, the newest question only; a click makes a spot in one step; closed ground says why',
    async () => {
      const { page } = opened;
      await open();
      await view().getByLabel('Hours').selectOption('day');
      await view().getByLabel('Hours').selectOption('moments');
      await expect.poll(fineness, { timeout: 30_000 }).toBeGreaterThan(0);
      await done();
      expect(await fineness()).toBe(1);
      const count = await lines().count();
      expect(count).toBeGreaterThan(3);
      expect(count).toBeLessThanOrEqual(12);
      const before = await spots().count();
      const first = lines().first();
      expect(await first.innerText()).toMatch(/good \d\d:\d\d–\d\d:\d\d/);
      // What stands in the list belongs to the last question: half an hour, not the day.
      expect(await first.innerText()).toMatch(/\b(15|30|45) good min/);
      await first.getByRole('button', { name: /^Make a standing spot of/ }).click();
      await first.getByRole('button', { name: /^Select/ }).waitFor();
      expect(await spots().count()).toBe(before + 1);
      await page.getByRole('button', { name: 'Undo' }).click();
      await first.getByRole('button', { name: /^Make a standing spot of/ }).waitFor();
      expect(await spots().count()).toBe(before);
      // In the grass some 60 m north of 07/25, near enough that no line of the survey is under the pointer.
      const zoom = await zoomOf();
      await page.getByRole('button', { name: 'Zoom in' }).click();
      await expect.poll(zoomOf).toBeGreaterThanOrEqual(zoom + 0.99);
      const at = await pixelOf(page, [18.17, 50.9286]);
      await page.mouse.click(at.x, at.y);
      await view()
        .getByText(/^Closed: too close to a runway/)
        .waitFor();
      await view().getByLabel('Shade by').selectOption('light-a');
      await view().getByRole('list', { name: 'Colours of the ground: Light at A' }).waitFor();
      await view().getByLabel('Focal length lines').selectOption({ index: 1 });
      expect(opened.complaints).toEqual([]);
    },
    patient,
  );

  it('[B262] without a runway it says so, and what would help', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Find airfield' }).click();
    await page.getByRole('button', { name: 'Start an empty survey where the map is now' }).click();
    await page.getByRole('button', { name: 'Where to stand' }).click();
    await view()
      .getByText(/^No runway drawn yet/)
      .waitFor();
  });
});

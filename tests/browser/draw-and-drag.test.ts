import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { atRest, openPage, pixelOf, type Opened } from './page';

/** The car park's deck of the sample site. */
const deck = [18.1783174, 50.926356] as const;
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const callout = (page: Page) => page.locator('.callout');

async function dragBy(page: Page, from: { x: number; y: number }, dx: number, dy: number): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 1; i <= 5; i++) await page.mouse.move(from.x + (dx * i) / 5, from.y + (dy * i) / 5);
}

describe('drawing and dragging', () => {
  let page: Page;
  let opened: Opened;
  beforeAll(async () => {
    opened = await openPage();
    ({ page } = opened);
  });
  /** The survey as it was: cheaper than another page. */
  afterEach(async () => {
    while (await undo(page).isEnabled()) await page.keyboard.press('Control+z');
  });
  afterAll(() => opened.done());

  it('[B20] reads the figures at the spot while it is dragged; the drag is one step, undone as one', async () => {
    const from = await pixelOf(page, deck);
    await dragBy(page, from, 40, 30);
    await expect.poll(() => callout(page).innerText()).toMatch(/\d+ m, [a-z-]+ side[^]*\d+ mm/);
    const during = await atRest(() => callout(page).innerText());
    await page.mouse.move(from.x + 60, from.y + 50);
    await expect.poll(() => callout(page).innerText()).not.toBe(during);
    await page.mouse.up();
    await expect.poll(() => undo(page).getAttribute('aria-label')).toMatch(/^Undo move/);
    await page.keyboard.press('Control+z');
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => undo(page).isDisabled()).toBe(false);
    expect(opened.complaints).toEqual([]);
  });

  it('[B21] Escape during a drag leaves no step', async () => {
    await dragBy(page, await pixelOf(page, deck), 40, 30);
    await callout(page).waitFor();
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });

  it('[B22] draws a runway by its two ends, with the designators that follow, and a spot', async () => {
    const middle = await pixelOf(page, [18.1734, 50.9287]);
    await page.locator('body').press('r');
    await page.mouse.click(middle.x - 150, middle.y + 60);
    await page.mouse.move(middle.x + 100, middle.y + 60);
    await page.mouse.click(middle.x + 120, middle.y + 60);
    await page.getByRole('heading', { name: 'Runways 3' }).waitFor();
    // Due east on the map is 090 true; declination there is some 5 degrees east.
    await expect.poll(() => page.getByLabel('What is selected').innerText()).toMatch(/090° true/);
    await page.getByRole('button', { name: /^(08|09)\/(26|27)/ }).waitFor();
    await page.locator('body').press('s');
    await page.mouse.click(middle.x - 60, middle.y + 130);
    await page.getByRole('heading', { name: 'Standing spots 6' }).waitFor();
    await page.keyboard.press('Control+z');
    await page.getByRole('heading', { name: 'Standing spots 5' }).waitFor();
  });

  it('[B23] nudges the selected spot by arrow keys, a series of them one step', async () => {
    await page.getByRole('button', { name: /^Car park, top deck/ }).click();
    await page.locator('[data-ready="true"] canvas').focus();
    const before = await atRest(() => callout(page).innerText());
    for (let i = 0; i < 12; i++) await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(() => callout(page).innerText()).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => callout(page).innerText()).toBe(before);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });
});

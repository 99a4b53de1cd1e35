import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, pixelOf, type Opened } from './page';

/** South of runway 07/25, between it and the lay-by at Mill Lane (18.1958617, 50.9305867). */
const corners = [
  [18.194, 50.9308],
  [18.197, 50.9312],
  [18.1965, 50.932],
] as const;

const selectLayBy = (page: Page) =>
  page.getByRole('complementary', { name: 'What the survey contains' }).getByText('Mill Lane lay-by').click();

describe('what stands in the way', () => {
  let opened: Opened;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage({ width: 1440, height: 900 });
    ({ page } = opened);
  });
  afterAll(() => opened.done());

  it('[B160] a building that is drawn hides part of a path: the card says how much, and by what', async () => {
    await selectLayBy(page);
    const right = page.getByRole('complementary', { name: 'What is selected' });
    await expect.poll(() => right.innerText()).toContain('From the terrain.');
    await page.getByRole('button', { name: 'Building', exact: true }).click();
    for (const corner of corners) {
      const { x, y } = await pixelOf(page, corner);
      await page.mouse.click(x, y);
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => right.innerText()).toContain('Obstacle');
    await right.getByLabel(/^Height/).fill('30');
    await right.getByLabel(/^Height/).press('Enter');
    await selectLayBy(page);
    await expect
      .poll(() => right.innerText())
      .toMatch(/\d+\s?% of it in sight, from .* Hidden by Building 1/);
  });

  it('[B161] shows the line of sight from the side, and follows it along the path by keyboard', async () => {
    const card = page.locator('section').filter({ hasText: 'Hidden by Building 1' }).last();
    await card.getByRole('button', { name: 'Sight line', exact: true }).click();
    const dock = page.getByRole('region', { name: 'Sight line from the side' });
    await dock.waitFor();
    const slider = dock.getByRole('slider');
    const said = () => dock.getByRole('status').innerText();
    await slider.focus();
    let hidden = '';
    // The best point is in sight, beside what is hidden: to one side or the other.
    for (let i = 0; i < 120 && !/^Hidden by Building 1/.test(hidden); i++) {
      await page.keyboard.press(i < 40 ? 'ArrowLeft' : 'ArrowRight');
      hidden = await said();
    }
    expect(hidden).toMatch(/^Hidden by Building 1, \d+ m from you\..*(higher would clear it|move aside)/);
    await dock.getByRole('button', { name: 'Close' }).click();
    await dock.waitFor({ state: 'detached' });
  });

  it('[B162] says where the heights of the ground come from; without them they are assumed', async () => {
    const right = page.getByRole('complementary', { name: 'What is selected' });
    await page.getByRole('button', { name: 'Heights of the ground' }).click();
    const dialog = page.getByRole('dialog', { name: 'Heights of the ground' });
    await expect.poll(() => dialog.getByRole('status').innerText()).toMatch(/^On: the sample site's own/);
    await dialog.getByRole('button', { name: 'Switch off' }).click();
    await expect
      .poll(() => dialog.getByRole('status').innerText())
      .toMatch(/^Off: the ground is assumed flat/);
    await page.keyboard.press('Escape');
    await expect.poll(() => right.innerText()).toContain('Assumed: as high as the nearest runway.');
    expect(opened.complaints).toEqual([]);
  });
});

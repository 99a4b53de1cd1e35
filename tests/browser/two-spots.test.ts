import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { forget, mapReady, openPage, pixelOf } from './page';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** Counts what a hand does on the page: clicks, and fields that something was typed into. */
async function counted(page: Page): Promise<() => Promise<{ clicks: number; fields: number }>> {
  await page.evaluate(() => {
    const done = { clicks: 0, fields: new Set<EventTarget | null>() };
    addEventListener('click', (event) => event.isTrusted && done.clicks++, true);
    addEventListener('input', (event) => event.isTrusted && done.fields.add(event.target), true);
    Object.assign(window, { done });
  });
  return () =>
    page.evaluate(() => {
      const { done } = window as unknown as { done: { clicks: number; fields: Set<unknown> } };
      return { clicks: done.clicks, fields: done.fields.size };
    });
}

/** A lens of one's own, on a device that knows none. */
async function enterLens(page: Page): Promise<void> {
  await page.locator('summary', { hasText: 'Subject and kit' }).click();
  await button(page, 'Edit kit and subjects').click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Add a lens' }).click();
  await dialog.getByLabel('Focal length, mm').pressSequentially('150-600');
  await dialog.getByLabel('Widest aperture, f-number').pressSequentially('5-6.3');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.getByText('150–600 mm f/5–6.3', { exact: true }).waitFor();
  await dialog.getByRole('button', { name: 'Close' }).first().click();
}

/** From the page as it opens to two spots at a field that was never looked at, each with its figures. */
async function surveyTwoSpots(page: Page): Promise<void> {
  await button(page, 'Find airfield').click();
  await page.getByRole('combobox', { name: /Code, name or town/ }).pressSequentially('eddm');
  await page.getByRole('option').filter({ hasText: 'EDDM' }).first().click();
  await page.getByRole('heading', { name: /^Runways [2-9]/ }).waitFor();
  for (const place of [
    [11.768, 48.3572],
    [11.793, 48.3685],
  ] as const) {
    await page.getByRole('button', { name: 'Standing spot', exact: true }).click();
    const { x, y } = await pixelOf(page, place);
    await page.mouse.click(x, y);
    await page
      .getByLabel('What is selected')
      .getByRole('heading', { name: /^Spot \d/ })
      .waitFor();
    await expect.poll(() => page.getByLabel('What is selected').innerText()).toMatch(/\d mm/);
  }
}

describe('two spots at an unknown field', () => {
  it('[B410] take 6 clicks and one typed field where the kit is known, 5 clicks and two fields more on a new device', async () => {
    const { page, context, done } = await openPage({ width: 1100, height: 640 });
    const fresh = await counted(page);
    await enterLens(page);
    await surveyTwoSpots(page);
    const onNew = await fresh();
    // The next visit, another day: the kit is on the device, and the field is begun anew.
    await page.reload();
    await mapReady(page);
    const known = await counted(page);
    await surveyTwoSpots(page);
    const withKit = await known();
    await page.locator('summary', { hasText: 'Subject and kit' }).click();
    await page.getByLabel('What the survey contains').getByText('150–600 mm f/5–6.3').first().waitFor();
    expect(withKit.clicks).toBeLessThanOrEqual(6);
    expect(withKit.fields).toBeLessThanOrEqual(1);
    expect(onNew.clicks).toBeLessThanOrEqual(11);
    expect(onNew.fields).toBeLessThanOrEqual(3);
    await forget(page, context);
    await done();
  });
});

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { openPage } from './page';

let page: Page;
let complaints: readonly string[] = [];
beforeAll(async () => {
  ({ page, complaints } = await openPage({ map: false, webgl: true }));
  await page.getByText('Orchard Path, east end').first().click();
  await page.getByRole('button', { name: 'Through the viewfinder' }).first().click();
  await page.getByRole('dialog').locator('canvas').nth(1).waitFor();
});
const picture = (letter: string) => page.getByRole('img', { name: /away, at/ }).filter({ hasText: letter });
/** How many colours a picture has: an empty canvas has one. */
const colours = () =>
  page
    .locator('dialog canvas')
    .first()
    .evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      const pixels =
        (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(0, 0, width, height).data ?? [];
      const seen = new Set<number>();
      for (let i = 0; i < pixels.length; i += 400)
        seen.add((pixels[i] ?? 0) * 65_536 + (pixels[i + 1] ?? 0) * 256 + (pixels[i + 2] ?? 0));
      return seen.size;
    });
const focalLabel = () => page.getByLabel(/would fill/);

describe('the viewfinder on the page', () => {
  test('[B240] shows both moments, in a picture and in words', async () => {
    await expect.poll(colours).toBeGreaterThan(20);
    await expect
      .poll(() => picture('A 08:00').getAttribute('aria-label'))
      .toMatch(/^A320 .*, \d+ m away, at \d+ mm as large as wanted; /);
    await expect.poll(() => page.getByRole('region', { name: /^Settings at/ }).count()).toBe(2);
  });

  test('[B241] by keyboard: + zooms, an arrow looks aside, 0 looks back', async () => {
    const before = Number(await focalLabel().inputValue());
    await picture('A 08:00').focus();
    await page.keyboard.press('+');
    await expect.poll(async () => Number(await focalLabel().inputValue())).toBeGreaterThan(before);
    await page.keyboard.press('ArrowRight');
    const back = page.getByRole('button', { name: 'Back to the aircraft' });
    await back.waitFor();
    await page.keyboard.press('0');
    await back.waitFor({ state: 'detached' });
  });

  test('[B242] a pinned shutter is chosen for both moments and stays while the sky changes the rest', async () => {
    await page
      .getByRole('button', { name: /^Pin Shutter/ })
      .first()
      .click();
    const card = page.getByRole('region', { name: 'Settings at A 08:00' });
    const shutter = page.getByRole('combobox', { name: 'Shutter for A and B' });
    await shutter.last().selectOption('1/400 s');
    await page.getByRole('dialog').getByLabel('Sky').selectOption('heavy');
    await expect.poll(() => card.innerText()).toMatch(/3 less for the sky/);
    await expect
      .poll(() => shutter.evaluateAll((all) => all.map((s) => (s as HTMLSelectElement).value)))
      .toEqual(['0.0025', '0.0025']);
    await page.getByRole('button', { name: 'Unpin Shutter' }).first().click();
    await shutter.first().waitFor({ state: 'detached' });
  });

  test('[B244] light that was typed goes before the sun: 20 lux on an apron are EV 3', async () => {
    const light = page.getByLabel('Light, EV or lux');
    const typed = async (text: string) => {
      await light.fill(text);
      await light.press('Tab');
    };
    await typed('20 lux');
    const card = page.getByRole('region', { name: 'Settings at A 08:00' });
    await expect
      .poll(() => card.innerText())
      .toContain('Exposure value 3.0 at ISO 100, as you have typed it.');
    await expect.poll(() => light.inputValue()).toBe('EV 3');
    await typed('bright');
    await expect.poll(() => page.getByRole('dialog').innerText()).toContain('"bright" is no light');
    await typed('');
    await expect.poll(() => card.innerText()).not.toContain('as you have typed it');
  });

  test('[B243] is saved as a PNG of both moments', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PNG' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^viewfinder-\d{4}-\d\d-\d\d\.png$/);
    const bytes = readFileSync(await download.path());
    expect([...bytes.subarray(1, 4)].map((b) => String.fromCharCode(b)).join('')).toBe('PNG');
    // Wider than two to one: two pictures side by side.
    expect(bytes.readUInt32BE(16) / bytes.readUInt32BE(20)).toBeGreaterThan(2);
    expect(complaints).toEqual([]);
  });
});

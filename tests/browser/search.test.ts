import { describe, expect, it } from 'vitest';
import { hasFocus, onePage } from './page';

const opened = onePage({ map: false });

describe('surveying a new airfield from home', () => {
  it('[B10] finds an airfield by code with the keyboard alone and fills the survey in', async () => {
    const { page, complaints } = opened;
    await page.locator('body').press('/');
    const box = page.getByRole('combobox', { name: /Code, name or town/ });
    await hasFocus(box);
    await page.keyboard.type('eddm');
    const first = page.getByRole('dialog').getByRole('option').first();
    await expect.poll(() => first.innerText()).toContain('EDDM');
    await expect.poll(() => page.getByRole('dialog').innerText()).toContain('Open Database License');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    await page.getByRole('heading', { name: /^Runways [2-9]/ }).waitFor();
    await expect.poll(() => page.getByLabel('Time zone').inputValue()).toBe('Europe/Berlin');
    // A and B begin an hour after sunrise and an hour before sunset, whatever the season.
    await expect.poll(() => page.getByLabel('Moments and light').innerText()).not.toMatch(/below the/);
    await page.getByRole('button', { name: /^08L\/26R/ }).click();
    await expect.poll(() => page.getByLabel('What is selected').innerText()).toMatch(/Length\s+[34],\d{3} m/);
    expect(complaints).toEqual([]);
  });

  it('[B11] narrows while typing, by name and town, and says when nothing fits', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Find airfield' }).click();
    const box = page.getByRole('combobox', { name: /Code, name or town/ });
    await box.fill('keflavik');
    await expect
      .poll(() => page.getByRole('dialog').getByRole('option').first().innerText())
      .toContain('BIKF');
    await box.fill('zzqqxx');
    await expect.poll(() => page.getByRole('dialog').getByRole('option').count()).toBe(0);
    await expect.poll(() => page.getByRole('dialog').getByRole('status').innerText()).not.toBe('');
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    await expect.poll(() => page.getByLabel('Name of the survey').inputValue()).toBe('Tolverby');
  });

  it('[B12] goes to an airfield whose runways are not located, to be drawn', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Find airfield' }).click();
    await page.getByRole('combobox', { name: /Code, name or town/ }).fill('airstrip');
    const unlocated = page.getByRole('dialog').getByRole('option').filter({ hasText: /draw/i }).first();
    await unlocated.click();
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    await expect.poll(() => page.locator('body').innerText()).toMatch(/Draw it by its two ends/);
  });
});

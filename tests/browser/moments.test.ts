import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { atRest, boxAtRest, onePage } from './page';

const opened = onePage({ map: false });

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const clock = (page: Page, moment: 'A' | 'B') => page.getByLabel(moment, { exact: true });
const handle = (page: Page, moment: 'A' | 'B') => page.getByRole('slider', { name: `Moment ${moment}` });

/** Takes hold of a handle once it has come to rest: parts of the page that arrive later move it. */
async function grab(page: Page, moment: 'A' | 'B'): Promise<{ x: number; y: number }> {
  const grip = handle(page, moment);
  const { width } = await boxAtRest(grip);
  await grip.hover({ position: { x: width / 2, y: 8 } });
  const box = await boxAtRest(grip);
  await page.mouse.down();
  return { x: box.x + width / 2, y: box.y + 8 };
}

describe('the bar of the day', () => {
  it('[B33] drags a moment in one step, to five minutes', async () => {
    const { page } = opened;
    await expect.poll(() => clock(page, 'A').inputValue()).toBe('08:00');
    const { x, y } = await grab(page, 'A');
    for (const dx of [7, 19, 40]) await page.mouse.move(x + dx, y);
    await page.mouse.up();
    await expect.poll(() => clock(page, 'A').inputValue()).toMatch(/^(08:[1-5]|09:[0-5]|1\d:[0-5])[05]$/);
    await expect.poll(() => clock(page, 'B').inputValue()).toBe('19:00');
    await page.keyboard.press('Control+z');
    await expect.poll(() => clock(page, 'A').inputValue()).toBe('08:00');
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });

  it('[B34] Escape gives a drag up, and what the pointer does after it is nothing', async () => {
    const { page } = opened;
    const { x, y } = await grab(page, 'B');
    await page.mouse.move(x - 50, y);
    await expect.poll(() => clock(page, 'B').inputValue()).not.toBe('19:00');
    await page.keyboard.press('Escape');
    await page.mouse.move(x - 90, y);
    await page.mouse.up();
    await expect.poll(() => clock(page, 'B').inputValue()).toBe('19:00');
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });

  it('[B35] steps by the arrow keys, five minutes each', async () => {
    const { page } = opened;
    await handle(page, 'A').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => clock(page, 'A').inputValue()).toBe('08:10');
    await page.keyboard.press('PageDown');
    await expect.poll(() => clock(page, 'A').inputValue()).toBe('07:10');
    await expect.poll(() => handle(page, 'A').getAttribute('aria-valuetext')).toBe('07:10');
  });
});

describe('the date', () => {
  it('[B36] goes a day on and back; rise and set follow', async () => {
    const { page } = opened;
    const date = page.getByLabel('Date at the airfield');
    const strip = page.getByLabel('Date and moments');
    await page.getByRole('button', { name: 'Next day' }).click();
    await expect.poll(() => date.inputValue()).toBe('22 Jun 2026');
    await page.getByRole('button', { name: 'Previous day' }).click();
    await page.getByRole('button', { name: 'Previous day' }).click();
    await expect.poll(() => date.inputValue()).toBe('20 Jun 2026');
    await date.fill('21/12');
    await date.press('Enter');
    await expect.poll(() => strip.innerText()).toMatch(/sunrise 07:[34]\d, sunset 15:[34]\d/);
    await expect.poll(() => strip.innerText()).toMatch(/UTC\+01:00/);
  });
});

describe('moments by the sun', () => {
  it('[B960] follow the date until a time is typed', async () => {
    const { page } = opened;
    const strip = page.getByLabel('Date and moments');
    await page.getByLabel('Set B by the sun').selectOption('beforeSunset');
    await expect.poll(() => clock(page, 'B').inputValue()).toMatch(/^20:/);
    await page.getByLabel('Date at the airfield').fill('2026-12-21');
    await page.keyboard.press('Enter');
    await expect.poll(() => clock(page, 'B').inputValue()).toMatch(/^14:[34]\d$/);
    await expect.poll(() => page.getByLabel('Set B by the sun').inputValue()).toBe('beforeSunset');
    await clock(page, 'B').fill('17:05');
    await clock(page, 'B').press('Enter');
    await expect.poll(() => page.getByLabel('Set B by the sun').inputValue()).toBe('');
    await page.getByLabel('Date at the airfield').fill('21 June');
    await page.keyboard.press('Enter');
    await expect.poll(() => strip.innerText()).toMatch(/sunrise 0\d:/);
    await expect.poll(() => clock(page, 'B').inputValue()).toBe('17:05');
  });
});

describe('the sky of the day', () => {
  it('[B961] is said by hand, shown with where it is from, and taken into the card', async () => {
    const { page } = opened;
    const sky = page.getByLabel('Sky', { exact: true });
    const strip = page.getByLabel('Date and moments');
    await expect.poll(() => strip.innerText()).toMatch(/no word of it: clear assumed/);
    await page.getByRole('button', { name: /^Orchard Path/ }).click();
    await sky.selectOption('overcast');
    await page.getByLabel('How far one sees').selectOption('3,000 m');
    await expect.poll(() => strip.innerText()).toMatch(/overcast, 3,000 m, as you said/);
    await page
      .getByText(/flat light: either side; (good|fair|poor)/)
      .first()
      .waitFor();
    await sky.selectOption('as reported');
    await expect.poll(() => strip.innerText()).toMatch(/clear assumed/);
  });
});

describe('a path', () => {
  it('[B37] is followed by the arrow keys, 20 m each, from the best point on', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: /^Mill Lane/ }).click();
    await page.getByRole('button', { name: 'Go along this path' }).first().click();
    const slider = page.getByLabel('Move along the path');
    const metres = async () => {
      const words = (await slider.getAttribute('aria-valuetext')) ?? '';
      expect(words).toMatch(/m before the threshold$/);
      return Number.parseInt(words.replace(',', ''), 10);
    };
    const begun = await atRest(metres);
    await slider.press('ArrowRight');
    await expect.poll(metres).toBe(begun - 20);
    await slider.press('ArrowLeft');
    await slider.press('ArrowLeft');
    await expect.poll(metres).toBe(begun + 20);
  });
});

describe('subject and body', () => {
  it('[B38] are chosen by the keyboard and leave no undo step', async () => {
    const { page } = opened;
    const chooser = page.locator('summary', { hasText: 'Subject and kit' });
    await chooser.focus();
    await chooser.press('Enter');
    await page.getByLabel('Type a designator or a word').fill('glider');
    await page.keyboard.press('Enter');
    const left = page.getByLabel('What the survey contains');
    await expect.poll(() => left.innerText()).toMatch(/Glider — typical size, /);
    // By an everyday name, and a type that the survey does not list comes into its list.
    await page.getByLabel('Type a designator or a word').fill('chinook');
    await page.keyboard.press('Enter');
    await expect.poll(() => left.innerText()).toMatch(/Chinook/i);
    await page.getByRole('button', { name: 'Undo take H47 into the list' }).click();
    await page.getByLabel('Type a designator or a word').fill('glider');
    await page.keyboard.press('Enter');
    await page.getByLabel('Body').selectOption('full-frame');
    await expect.poll(() => left.innerText()).toMatch(/Glider — typical size, Full frame/);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });
});

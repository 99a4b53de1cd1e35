import { readFile } from 'node:fs/promises';
import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { atRest, boxAtRest, openPage, type Opened } from './page';

let opened: Opened;
let page: Page;
beforeAll(async () => {
  opened = await openPage({ width: 1280, height: 900, map: false });
  page = opened.page;
});
const view = (name: string) => page.getByRole('button', { name, exact: true });
const undo = () => page.getByRole('button', { name: /^Undo/ });
const moment = (letter: 'A' | 'B') => page.getByRole('slider', { name: `Moment ${letter}` });
const time = (letter: 'A' | 'B') => moment(letter).getAttribute('aria-valuetext');

/** Presses and moves over a canvas by shares of its box. */
async function drag(selector: string, ...at: readonly (readonly [number, number])[]): Promise<void> {
  const box = await boxAtRest(page.locator(selector).last());
  const [first, ...rest] = at.map(([x, y]) => [box.x + x * box.width, box.y + y * box.height] as const);
  if (!first) throw new Error('expected a place');
  await page.mouse.move(...first);
  await page.mouse.down();
  for (const place of rest) await page.mouse.move(...place);
  await page.mouse.up();
}

describe('the foot', () => {
  it('[B220] changes its view, and its height by the arrow keys', async () => {
    await view('Light today').click();
    const edge = page.getByRole('separator', { name: 'Height of the foot' });
    const before = Number(await edge.getAttribute('aria-valuenow'));
    await edge.press('ArrowUp');
    await edge.press('ArrowUp');
    await expect.poll(() => edge.getAttribute('aria-valuenow')).toBe(String(before + 10));
    await edge.press('End');
    await expect.poll(async () => (await boxAtRest(page.locator('.map-slot'))).height).toBeGreaterThan(50);
    await view('Moments').click();
    await expect.poll(() => edge.count()).toBe(0);
    await view('Light today').click();
  });
});

describe('the light through the day', () => {
  it('[B221] tells each spot and path in words, most worth first', async () => {
    const rows = page.getByRole('region', { name: 'Light today' }).getByRole('listitem').getByRole('button');
    await expect.poll(() => rows.count()).toBeGreaterThan(4);
    const words = () => rows.evaluateAll((all) => all.map((row) => row.getAttribute('aria-label') ?? ''));
    const orchard = async () =>
      (await words()).find((label) => /^Orchard Path, east end, 25 arrival/.test(label));
    // The lit side of the runway there is the north one from 16:40 on; the sun sets at 21:05.
    await expect.poll(orchard).toMatch(/front-lit, good, 16:[34]\d to 21:0\d, twilight/);
  });

  it('[B222] a drag in the strip moves the moment in one step, and follows the row', async () => {
    await expect.poll(() => undo().isDisabled()).toBe(true);
    // The strip shows the light part of the day, from first light at 03:48 to last at 21:50: 03:30 to 22:00.
    await drag('section[aria-label="Light today"] .field', [0.5, 0.1], [0.6, 0.1], [14.5 / 18.5, 0.1]);
    await expect.poll(() => time('A')).toBe('18:00');
    await page.getByRole('button', { name: /^B \d/ }).click();
    await drag('section[aria-label="Light today"] .field', [2.5 / 18.5, 0.1]);
    await expect.poll(() => time('B')).toBe('06:00');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => Promise.all([time('A'), time('B')])).toEqual(['08:00', '19:00']);
    await expect.poll(() => undo().isDisabled()).toBe(true);
  });
});

describe('the year', () => {
  it('[B223] goes by arrow keys through days and hours, and says what is there', async () => {
    await view('Year').click();
    await page.getByLabel('Spot and path').selectOption({ label: 'Orchard Path, east end, 25 arrival' });
    const told = page.getByRole('region', { name: 'Light through the year' }).locator('[aria-live]');
    const field = page.getByRole('application', { name: /^Dates to the right/ });
    await page.getByRole('button', { name: /^B \d/ }).click();
    await field.press('PageDown');
    await field.press('ArrowRight');
    await field.press('ArrowDown');
    await page.mouse.move(5, 5);
    await expect
      .poll(() => told.innerText())
      .toMatch(/^22 Jul 2026, 19:15 front-lit, score (1\.00|0\.9\d), /);
    await drag('section[aria-label="Light through the year"] .field', [0.001, 0.5]);
    await page.mouse.move(5, 5);
    await expect.poll(() => told.innerText()).toMatch(/^1 Jan 2026, 12:00 /);
    for (let i = 0; i < 4; i++) await page.keyboard.press('Control+z');
    await expect.poll(() => told.innerText()).toMatch(/^21 Jun 2026, 19:00 /);
    await expect.poll(() => undo().isDisabled()).toBe(true);
  });
});

describe('the plan', () => {
  it('[B224] says where to stand when and why, with a way that can be typed', async () => {
    await view('Plan').click();
    const plan = page.getByRole('region', { name: 'Plan' });
    await expect.poll(() => plan.innerText()).toMatch(/16:40–21:05 Orchard Path, east end, 25 arrival/);
    await expect.poll(() => plan.innerText()).toMatch(/front-lit until the sun sets; 150–180 mm/);
    await expect.poll(() => plan.innerText()).toMatch(/If the wind turns to about 073°/);
    const way = page.getByLabel('Minutes from Orchard Path, east end to Mill Lane lay-by');
    const leave = () =>
      plan
        .getByText(/^Leave Orchard Path, east end by/)
        .first()
        .innerText();
    const before = await atRest(leave);
    await way.fill('25');
    await way.press('Enter');
    await expect.poll(leave).not.toBe(before);
    await plan.getByRole('button', { name: 'use the estimate' }).first().click();
    await expect.poll(leave).toBe(before);
  });

  it('[B225] takes windows along as a calendar file that another program reads', async () => {
    const plan = page.getByRole('region', { name: 'Plan' });
    await plan.getByRole('button', { name: 'Take the day along' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      plan.getByRole('button', { name: 'Calendar file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('tolverby-2026-06-21.ics');
    const text = await readFile(await download.path(), 'utf8');
    const events = new ICAL.Component(ICAL.parse(text) as unknown[])
      .getAllSubcomponents('vevent')
      .map((event) => new ICAL.Event(event));
    expect(events.length).toBeGreaterThan(2);
    const last = events.at(-1);
    for (const event of events) {
      expect(event.component.getAllSubcomponents('valarm')).toHaveLength(1);
      expect(event.component.getFirstPropertyValue('geo')).toHaveLength(2);
      expect(event.description).toMatch(/^(Leave .+ by|Be there by) \d\d:\d\d/);
      expect(event.description).toMatch(/\nLens: .+ mm, f\/[\d.]+, /);
      expect(event.description).toMatch(/\nStart with f\/[\d.]+, 1\/\d+ s, ISO /);
      expect(event.description).toMatch(/\nPosition: /);
      expect(event.description).toMatch(/\nIf the wind turns to about 0\d\d°/);
    }
    expect(last?.summary).toBe('Orchard Path, east end: 25 arrival');
    expect(last?.endDate.toJSDate().toISOString()).toBe('2026-06-21T19:05:00.000Z');
    expect(last?.description).toMatch(/Stay on public or permitted ground/);
    await plan
      .getByRole('button', { name: /^Take out/ })
      .first()
      .click();
    await expect.poll(() => plan.getByRole('button', { name: /^Take out/ }).count()).toBe(events.length - 1);
  });

  it('[B226] every view fits a phone, nothing to the side of the page', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.getByRole('button', { name: 'Light', exact: true }).click();
    for (const name of ['Moments', 'Light today', 'Year', 'Plan']) {
      await view(name).click();
      const wide = () =>
        page
          .locator('footer.foot')
          .evaluate((foot) => [foot.scrollWidth - foot.clientWidth, document.documentElement.scrollWidth]);
      await expect.poll(wide, { message: name }).toEqual([0, 360]);
    }
    expect(opened.complaints).toEqual([]);
  });
});

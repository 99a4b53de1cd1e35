import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atRest, boxAtRest, openPage, type Opened } from './page';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Shares of the page's height, and whether the foot stays on the page. */
const room = (page: Page) =>
  page.evaluate(() => {
    const box = (selector: string) =>
      document.querySelector(selector)?.getBoundingClientRect() ?? new DOMRect();
    const [map, foot] = [box('.map-slot'), box('footer')];
    return {
      map: map.height / innerHeight,
      foot: foot.height,
      end: foot.bottom / innerHeight,
      under: foot.top - map.bottom,
    };
  });

describe('the map keeps its share of a low page', () => {
  // One page, made larger and smaller as a window is: what is open and what is not does not depend on its size.
  let opened: Opened;
  beforeAll(async () => {
    opened = await openPage({ map: false });
  });
  afterAll(() => opened.done());

  it.each([
    [1440, 500],
    [1024, 600],
    [1280, 720],
    [1100, 760],
  ])(
    '[B400] at %i by %i px, whichever view the foot shows; what the view has more scrolls in it',
    async (width, height) => {
      const { page } = opened;
      await page.setViewportSize({ width, height });
      for (const view of ['Moments', 'Light today', 'Plan']) {
        await button(page, view).click();
        await page.locator('footer section').first().waitFor();
        await expect
          .poll(
            async () => {
              const { map, foot, end, under } = await room(page);
              return {
                map: map >= 0.45 || map,
                foot: end <= 1.001 || end,
                apart: under >= -1 || under,
                // The row of views and at least a line of what is shown.
                shown: foot > 90 || foot,
              };
            },
            { message: view },
          )
          .toEqual({ map: true, foot: true, apart: true, shown: true });
      }
      const content = page.locator('footer .tall');
      const [shown, whole] = await content.evaluate((box) => [box.clientHeight, box.scrollHeight]);
      if (whole > shown) {
        await content.evaluate((box) => box.scrollTo(0, box.scrollHeight));
        await expect.poll(() => content.evaluate((box) => box.scrollTop)).toBeGreaterThan(0);
      }
    },
  );

  it('[B401] by hand the foot takes more, and the map still does not go', async () => {
    const { page } = opened;
    await page.setViewportSize({ width: 1440, height: 720 });
    // A view that is open already would be closed.
    await button(page, 'Moments').click();
    await button(page, 'Plan').click();
    await expect.poll(() => button(page, 'Plan').getAttribute('aria-pressed')).toBe('true');
    await page.locator('footer section').first().waitFor();
    const before = await atRest(() => room(page));
    await page.getByRole('separator', { name: 'Height of the foot' }).press('End');
    await expect.poll(async () => (await room(page)).foot).toBeGreaterThan(before.foot + 60);
    await expect.poll(async () => (await room(page)).map).toBeGreaterThanOrEqual(0.2);
  });

  it('[B402] on a phone that lies on its side the sheet stands beside the map', async () => {
    const { page, done } = await openPage({ width: 740, height: 360, touch: true, map: false });
    await button(page, 'Light').tap();
    for (const [width, height] of [
      [740, 360],
      [844, 390],
    ] as const) {
      await page.setViewportSize({ width, height });
      await expect
        .poll(async () => {
          const map = await boxAtRest(page.locator('.map-slot'));
          const sheet = await boxAtRest(page.locator('footer'));
          return [map.height > 0.6 * height, map.width > 0.45 * width, sheet.x >= map.width - 1];
        })
        .toEqual([true, true, true]);
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
        .toBeLessThanOrEqual(0);
    }
    await done();
  });
});

describe('on a phone', () => {
  it('[B403] an arrow says that the foot has more views; a finger and the keyboard reach the last one', async () => {
    const { page, done } = await openPage({ width: 360, height: 640, touch: true, map: false });
    await button(page, 'Light').tap();
    const row = page.getByRole('navigation', { name: 'Views of time' });
    const inSight = (name: string) =>
      row.getByRole('button', { name }).evaluate((view) => {
        const [box, of] = [view.getBoundingClientRect(), view.parentElement!.getBoundingClientRect()];
        return box.left >= of.left - 1 && box.right <= of.right + 1;
      });
    const arrow = (way: string) => page.locator('.views .more', { hasText: way });
    await expect.poll(() => inSight('Log')).toBe(false);
    await expect.poll(() => arrow('‹').count()).toBe(0);
    await arrow('›').tap();
    // Until there is no more: the arrow goes when it has done its work.
    await expect
      .poll(async () => {
        await arrow('›').evaluateAll((arrows) => arrows.forEach((it) => (it as HTMLElement).click()));
        return inSight('Log');
      })
      .toBe(true);
    await expect.poll(() => arrow('›').count()).toBe(0);
    await expect.poll(() => arrow('‹').count()).toBe(1);
    // The keyboard passes the arrows by: every view is a stop.
    await row.getByRole('button', { name: 'Moments' }).focus();
    await expect.poll(() => inSight('Moments')).toBe(true);
    for (let i = await row.getByRole('button').count(); i > 1; i--) await page.keyboard.press('Tab');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Log');
    await page.keyboard.press('Enter');
    await expect.poll(() => inSight('Log')).toBe(true);
    await done();
  });

  it('[B404] the legend is one tap away, and below it the map still shows', async () => {
    const { page, done } = await openPage({ width: 360, height: 740, touch: true, map: false });
    const legend = page.locator('.over-map summary');
    await legend.tap();
    await page.locator('.over-map').getByText('Rings: A inside, B outside').waitFor();
    await expect
      .poll(async () => {
        const open = await boxAtRest(page.locator('.over-map'));
        const map = await boxAtRest(page.locator('.map-slot'));
        return (open.y + open.height - map.y) / map.height;
      })
      .toBeLessThan(0.7);
    await legend.tap();
    await expect.poll(async () => (await boxAtRest(page.locator('.over-map'))).height).toBeLessThan(60);
    await done();
  });
});

describe('the page and its dates', () => {
  it('[B405] speaks one language, whatever the device speaks; a date that is none is said, and kept', async () => {
    const { page, done } = await openPage({ width: 1280, height: 720, map: false, locale: 'de-DE' });
    const strip = page.getByLabel('Date and moments');
    await expect.poll(() => strip.innerText()).toMatch(/Sunday, 21 June 2026/);
    const date = page.getByLabel('Date at the airfield');
    await expect.poll(() => date.inputValue()).toBe('21 Jun 2026');
    await date.fill('31 June');
    await date.press('Enter');
    await page.getByRole('alert').getByText('Type a date, such as 21 Jun 2026.').waitFor();
    await expect.poll(() => date.inputValue()).toBe('31 June');
    await date.press('Escape');
    await expect.poll(() => date.inputValue()).toBe('21 Jun 2026');
    await done();
  });
});

/** One word, as some are. */
const long = 'Donaudampfschifffahrtsgesellschaftskapitänsmützenhügelaussichtsplattform';

describe('a name of one very long word', () => {
  it.each([
    [1280, 720],
    [360, 740],
  ])('[B1067] is broken, at %i by %i px, and pushes nothing off what it stands in', async (width, height) => {
    const { page, done } = await openPage({ width, height, map: false });
    const sample = await readFile('sample-sites/tolverby.geojson', 'utf8');
    const text = sample.replaceAll('Orchard Path, east end', long);
    if (width < 760) await button(page, 'Menu').click();
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      button(page, 'Open').filter({ visible: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'long.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(text),
    });
    if (width < 760) await button(page, 'Light').click();
    await button(page, 'Plan').click();
    const name = page
      .getByRole('region', { name: 'Plan', exact: true })
      .getByRole('button', { name: long })
      .first();
    await expect.poll(async () => (await boxAtRest(name)).width).toBeLessThan(width / 2 + 140);
    await name.click();
    if (width < 760) await button(page, long).filter({ visible: true }).last().click();
    const heading = page.getByRole('heading', { name: long }).filter({ visible: true });
    const close = heading.locator('..').getByRole('button', { name: 'Close' });
    await expect
      .poll(async () => {
        const box = await boxAtRest(close);
        return box.x + box.width;
      })
      .toBeLessThanOrEqual(width);
    await done();
  });
});

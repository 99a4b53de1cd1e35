import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atRest, boxAtRest, openPage, pixelOf, type Opened } from './page';

/** The car park's deck of the sample site. */
const deck = [18.1783174, 50.926356] as const;
const camera = (page: Page) =>
  page.locator('[data-ready="true"]').evaluate((map) => {
    const { lng, lat, zoom } = (map as HTMLElement).dataset;
    return { lng: Number(lng), lat: Number(lat), zoom: Number(zoom) };
  });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

describe('by keyboard alone', () => {
  let opened: Opened;
  let page: Page;
  const focused = () =>
    page.evaluate(() => document.activeElement?.ariaLabel ?? document.activeElement?.textContent ?? '');
  beforeAll(async () => {
    opened = await openPage({ width: 1100, height: 640 });
    ({ page } = opened);
  });
  afterAll(() => opened.done());

  it('[B122] the first stop leads to the map, which pans, zooms and draws a runway and a spot', async () => {
    await page.keyboard.press('Tab');
    await expect.poll(focused).toBe('Skip to the map');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('Map of the survey');
    const start = await camera(page);
    await page.keyboard.press('+');
    await expect.poll(async () => (await camera(page)).zoom).toBeCloseTo(start.zoom + 1, 3);
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => (await camera(page)).lat).toBeGreaterThan(start.lat);
    await page.keyboard.press('r');
    await page.keyboard.press('Enter');
    const first = await atRest(() => camera(page));
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await camera(page)).lng).toBeGreaterThan(first.lng);
    await page.keyboard.press('Enter');
    // Drawn from west to east: its first end lands to the east, and the lower designator leads.
    await button(page, /^(08|09)\/(26|27)/).waitFor();
    await page.keyboard.press('s');
    await page.keyboard.press(' ');
    await page.getByRole('heading', { name: 'Standing spots 6' }).waitFor();
    // The spot stands on the runway: the list says so where it is chosen.
    await expect
      .poll(() => button(page, /^Spot 1/).innerText())
      .toMatch(/The spot is on runway (08|09)\/(26|27)/);
  });

  it('[B123] what is selected is read out once its figures rest, and is nudged with Ctrl free to pan', async () => {
    await button(page, /^Car park, top deck/).focus();
    await page.keyboard.press('Enter');
    const said = page.locator('[data-said]');
    await expect.poll(() => said.innerText()).toMatch(/^Car park, top deck: \d+ m, .* mm at .*; light at A /);
    await page.locator('[data-ready="true"] canvas').focus();
    await page.keyboard.press('End');
    await expect.poll(async () => (await camera(page)).lng).toBeCloseTo(deck[0], 3);
    await page.keyboard.press('Control+ArrowLeft');
    await expect.poll(async () => (await camera(page)).lng).toBeLessThan(deck[0] - 0.0005);
    await expect.poll(() => undo(page).getAttribute('aria-label')).not.toMatch(/move/);
    const before = await atRest(() => said.innerText());
    for (let i = 0; i < 10; i++) await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => said.innerText()).not.toBe(before);
    await expect.poll(() => undo(page).getAttribute('aria-label')).toBe('Undo move standing spot');
  });

  it('[B124] Escape goes from menu to selection, and the focus returns to where it came from', async () => {
    await button(page, /^Car park, top deck/).focus();
    await page.keyboard.press('Enter');
    await button(page, 'Menu').focus();
    await page.keyboard.press('Enter');
    await expect.poll(focused).toMatch(/^Pass on/);
    await page.keyboard.press('ArrowDown');
    await expect.poll(focused).toMatch(/^Merge/);
    await page.keyboard.press('Escape');
    await expect.poll(focused).toBe('Menu');
    await expect.poll(() => button(page, /^Car park, top deck/).getAttribute('aria-current')).toBe('true');
    await page.keyboard.press('?');
    const list = page.getByRole('dialog', { name: 'Short cuts' });
    await list.getByText('Move what is selected by 1 m').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(focused).toBe('Menu');
    await page.getByLabel('What is selected').getByRole('button', { name: 'Close' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(focused).toMatch(/^Car park, top deck/);
  });

  it('[B125] changes its look without losing what is selected', async () => {
    await button(page, /^Orchard Path/).click();
    const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const bars = () => page.locator('meta[name="theme-color"]').getAttribute('content');
    const [day, dayBars] = [await ground(), await bars()];
    await page.emulateMedia({ colorScheme: 'dark' });
    await expect.poll(ground).not.toBe(day);
    await expect.poll(bars).not.toBe(dayBars);
    await button(page, 'Menu').click();
    await button(page, 'Preferences').first().click();
    await page.getByRole('dialog').getByLabel('day', { exact: true }).check();
    await expect.poll(ground).toBe(day);
    await page.keyboard.press('Escape');
    await expect.poll(() => button(page, /^Orchard Path/).getAttribute('aria-current')).toBe('true');
    await page.emulateMedia({ colorScheme: 'light' });
  });

  it('[B126] two moments at one time are taken hold of on either side; a time that the clocks skip is said', async () => {
    const field = (name: string) => page.getByLabel(name, { exact: true });
    await field('B').fill('8');
    await field('B').press('Enter');
    await expect.poll(() => field('B').inputValue()).toBe('08:00');
    const handle = (m: string) => boxAtRest(page.getByRole('slider', { name: `Moment ${m}` }));
    await expect
      .poll(async () => {
        const [a, b] = [await handle('A'), await handle('B')];
        return b.x + 1 - (a.x + a.width);
      })
      .toBeGreaterThanOrEqual(0);
    await field('A').fill('half past');
    await field('A').press('Enter');
    await page.getByText('Type a time, such as 18:30.').waitFor();
    await field('A').fill('2.30');
    await field('A').press('Enter');
    await page.getByLabel('Date at the airfield').fill('2026-03-29');
    await page.keyboard.press('Enter');
    await page.getByText('The clocks skip 02:30 on this day; 03:30 is taken').waitFor();
  });
});

describe('by touch on a phone', () => {
  let opened: Opened;
  let page: Page;
  let session: CDPSession;
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: [number, number][]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(([x, y], id) => ({ x, y, id })),
    });
  beforeAll(async () => {
    opened = await openPage({ width: 360, height: 740, touch: true });
    ({ page } = opened);
    session = await opened.context.newCDPSession(page);
  });
  afterAll(() => opened.done());

  it('[B127] a second finger turns a drag into a pinch: the map zooms, the spot stays where it was', async () => {
    const { x, y } = await pixelOf(page, deck);
    const { zoom } = await atRest(() => camera(page));
    await touch('touchStart', [x, y]);
    // Held, until its figures come.
    await page.locator('.callout').waitFor();
    await touch('touchMove', [x + 14, y + 10]);
    await touch('touchStart', [x + 14, y + 10], [x - 60, y - 60]);
    for (let i = 1; i <= 6; i++)
      await touch('touchMove', [x + 14 + 8 * i, y + 10 + 8 * i], [x - 60 - 8 * i, y - 60 - 8 * i]);
    await touch('touchEnd');
    await expect.poll(async () => (await camera(page)).zoom).toBeGreaterThan(zoom + 0.3);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
  });

  it('[B1068] while something is drawn the map’s own buttons stay free of what it is drawn with, upright and on its side', async () => {
    for (const size of [
      { width: 360, height: 740 },
      { width: 740, height: 360 },
    ]) {
      await page.setViewportSize(size);
      for (const tool of ['Standing spot', 'No-go area']) {
        await page.getByRole('button', { name: 'Draw', exact: true }).click();
        await page.getByRole('button', { name: tool, exact: true }).filter({ visible: true }).click();
        for (const at of [0, -1])
          await expect
            .poll(
              () =>
                page
                  .locator('.keys:has([aria-label="Zoom in"]) > button')
                  .nth(at)
                  .evaluate((button) => {
                    const { x, y, width, height } = button.getBoundingClientRect();
                    return button.contains(document.elementFromPoint(x + width / 2, y + height / 2));
                  }),
              { message: `${tool}, button ${at}, ${size.width} px` },
            )
            .toBe(true);
        await page.getByRole('button', { name: 'Cancel', exact: true }).click();
      }
    }
    await page.setViewportSize({ width: 360, height: 740 });
  });

  it('[B24] pans where a finger slides, selects where it taps, moves a spot that it holds or by its handle', async () => {
    const slide = async ({ x, y }: { x: number; y: number }, dx: number, dy: number) => {
      const moves = [1, 2, 3, 4, 5].map((i) => touch('touchMove', [x + (dx * i) / 5, y + (dy * i) / 5]));
      await Promise.all([...moves, touch('touchEnd')]);
    };
    const latitude = () => page.locator('[data-ready="true"]').getAttribute('data-lat');
    /** Undone again: cheaper than another page. Not by a tap, which a browser passes over while a quick slide still runs out. */
    const moved = async () => {
      await expect.poll(() => undo(page).getAttribute('aria-label')).toMatch(/^Undo move/);
      await undo(page).click();
      await expect.poll(() => undo(page).isDisabled()).toBe(true);
    };
    const before = await atRest(latitude);
    const at = await pixelOf(page, deck);
    // In one go: a finger that rests on a spot takes hold of it, and a busy machine makes it rest between two messages. On
    // one that is busier still it rests all the same: then the spot is put back, and the finger slides again.
    await expect
      .poll(async () => {
        if (await undo(page).isEnabled()) await undo(page).click();
        await Promise.all([touch('touchStart', [at.x, at.y]), slide(at, 20, -60)]);
        return atRest(latitude);
      })
      .not.toBe(before);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);

    const tapped = await pixelOf(page, deck);
    await expect
      .poll(async () => {
        await page.touchscreen.tap(tapped.x, tapped.y);
        return page.locator('.spot-line button').count();
      })
      .toBe(1);
    await expect.poll(() => undo(page).isDisabled()).toBe(true);

    await touch('touchStart', [tapped.x, tapped.y]);
    // The figures at the finger say that the spot is held.
    await page.locator('.callout').waitFor();
    await slide(tapped, 30, -30);
    await moved();

    const box = await boxAtRest(page.locator('.map-slot .handle'));
    const handle = { x: box.x + 22, y: box.y + 22 };
    await touch('touchStart', [handle.x, handle.y]);
    await slide(handle, -30, 20);
    await moved();
    await page.keyboard.press('Escape');
    await page.locator('.spot-line button').waitFor({ state: 'detached' });
  });

  it('[B128] a spot is placed at the cross, and read in one large line under the map', async () => {
    await button(page, 'Draw').tap();
    await button(page, 'Standing spot').tap();
    // Before it is set, the cross says what one would have there.
    const there = page.locator('.at-cross');
    await expect.poll(() => there.innerText()).toMatch(/\d m, [a-z-]+ side of \d\d\/\d\d/);
    await expect
      .poll(() => there.innerText())
      .toMatch(/\d+ mm\s+at \d+ m\s.* mm f\/.*(fits|tight|too)[^]*A [a-z-]+/);
    const said = await atRest(() => there.innerText());
    const at = await pixelOf(page, deck);
    for (const [type, by] of [
      ['touchStart', 0],
      ['touchMove', 17],
      ['touchMove', 34],
      ['touchEnd', 0],
    ] as const)
      await (type === 'touchEnd' ? touch(type) : touch(type, [at.x, at.y - by]));
    await expect.poll(() => there.innerText()).not.toBe(said);
    await button(page, 'Place at the cross').tap();
    const line = page.locator('.spot-line button');
    await line.waitFor();
    await expect.poll(() => line.innerText()).toMatch(/^Spot 1\b/);
    // What to wait for, with which lens, in which light and until when: without opening anything.
    await expect.poll(() => line.innerText()).toMatch(/\d\d (arrival|departure)/);
    await expect.poll(() => line.innerText()).toMatch(/ mm f\/[\d.]+.*: \d+ mm, f\//);
    await expect.poll(() => line.innerText()).toMatch(/A [a-z-]+.* until \d\d:\d\d/);
    const sizes = await atRest(() =>
      line.evaluate((box) => {
        const main = getComputedStyle(box.querySelector('.main') as Element);
        return [Number.parseFloat(main.fontSize), Number(main.fontWeight), box.clientHeight];
      }),
    );
    expect(sizes[0]).toBeGreaterThanOrEqual(20);
    expect(sizes[1]).toBeGreaterThanOrEqual(600);
    expect(sizes[2]).toBeGreaterThanOrEqual(44);
    await line.tap();
    await page.getByLabel('What is selected').getByRole('heading', { name: 'Spot 1' }).waitFor();
  });

  it('[B129] the sheet is pulled taller, and down to close it', async () => {
    const handle = button(page, 'Taller sheet');
    const top = async () => (await boxAtRest(handle)).y;
    const half = await top();
    const pull = async (to: number) => {
      const from = (await top()) + 12;
      await touch('touchStart', [180, from]);
      for (let i = 1; i <= 4; i++) await touch('touchMove', [180, from + ((to - from) * i) / 4]);
      await touch('touchEnd');
    };
    await pull(120);
    await expect.poll(top).toBeLessThan(half - 150);
    await expect.poll(() => handle.getAttribute('aria-expanded')).toBe('true');
    // What has come to lie under the finger by the time of its click is not meant.
    await page.evaluate(() =>
      addEventListener('click', ({ target }) => {
        if (!(target as Element).matches('.handle'))
          document.body.dataset['met'] = (target as Element).tagName;
      }),
    );
    await handle.tap();
    await expect.poll(top).toBeCloseTo(half, -1);
    await handle.tap();
    await expect.poll(top).toBeLessThan(half - 150);
    await handle.tap();
    await expect.poll(top).toBeCloseTo(half, -1);
    expect(await page.evaluate(() => document.body.dataset['met'])).toBeUndefined();
    await pull(700);
    await expect.poll(() => handle.count()).toBe(0);
  });

  it('[B130] every target is 44 px high, on every sheet', async () => {
    const tabs = page.getByRole('navigation', { name: 'Sheets' }).getByRole('button');
    for (const place of [0, 1, 2, 3]) {
      await tabs.nth(place).tap();
      const small = () =>
        page.evaluate(() =>
          [
            ...document.querySelectorAll<HTMLElement>(
              'button, select, summary, input:not([type="checkbox"], [type="radio"])',
            ),
          ]
            .filter(
              (target) =>
                target.checkVisibility({ visibilityProperty: true }) && target.closest('.skip') === null,
            )
            .filter((target) => {
              const around = getComputedStyle(target, '::after');
              const reach = around.content === 'none' ? 0 : -Number.parseFloat(around.top || '0');
              return target.getBoundingClientRect().height + (reach || 0) < 43.9;
            })
            .map(
              (target) =>
                `${target.ariaLabel ?? target.textContent} ${target.getBoundingClientRect().height}`,
            ),
        );
      await expect.poll(small, { message: `sheet ${place}` }).toEqual([]);
    }
  });
});

import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { boxAtRest, openPage, urlOf, type Opened } from './page';

let opened: Opened;
let page: Page;
const requests: string[] = [];
/** No position of any survey: what is kept or sent would be found by it. */
const odd = { longitude: 18.188_137, latitude: 50.933_713 };
const orchard = { longitude: 18.193_29, latitude: 50.934_33 };

beforeAll(async () => {
  opened = await openPage({
    ...{ width: 360, height: 740, touch: true, map: false, apart: true },
    onRequest: (url) => requests.push(url),
  });
  page = opened.page;
  await opened.context.grantPermissions(['geolocation'], { origin: urlOf({ map: false }) });
  await page.clock.setFixedTime('2026-06-21T18:00:20+02:00');
});
const now = () => page.getByRole('region', { name: 'At the field' });
const press = (name: string) => now().getByRole('button', { name, exact: true }).click();
const status = () => now().getByRole('status');
const move = (to: { longitude: number; latitude: number }, accuracy: number) =>
  opened.context.setGeolocation({ ...to, accuracy });

/** Everything that the page keeps on this device, as text. */
const keptText = (): Promise<string> =>
  page.evaluate(async () => {
    const kept = [JSON.stringify({ ...localStorage }), JSON.stringify({ ...sessionStorage })];
    for (const { name } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>((done, fail) => {
        const asked = indexedDB.open(name ?? '');
        asked.onsuccess = () => done(asked.result);
        asked.onerror = () => fail(new Error('no database'));
      });
      for (const store of database.objectStoreNames) {
        const all = database.transaction(store).objectStore(store).getAll();
        kept.push(await new Promise((done) => (all.onsuccess = () => done(JSON.stringify(all.result)))));
      }
      database.close();
    }
    return kept.join('\n');
  });

describe('at the field', () => {
  it('[B320] tells of a spot that is chosen by hand without asking where one is', async () => {
    await page.getByRole('button', { name: 'Menu', exact: true }).click();
    await page.getByRole('button', { name: 'At the field', exact: true }).click();
    await now().getByLabel('Spot').selectOption({ label: 'Orchard Path, east end' });
    await expect.poll(() => now().innerText()).toMatch(/25 arrival\s+\d+ mm at \d+ m/);
    const text = () => now().innerText();
    await expect.poll(text).toMatch(/^18:00\s+25 in use/);
    await expect.poll(text).toContain('front-lit for two hours or more');
    await expect.poll(text).toMatch(/f\/[\d.]+ · 1\/\d+ s · ISO \d+/);
    await expect.poll(text).toContain('sunset 21:05');
    await expect.poll(text).toMatch(/If the wind turns to about 073°/);
  });

  it('[B332] comes back where it was when the phone has thrown the page away; what is read has most of it', async () => {
    await press('Turn ends');
    await page.reload();
    await expect.poll(() => now().innerText()).toMatch(/^18:00\s+07 in use/);
    await expect.poll(() => status().innerText()).toContain('At Orchard Path, east end');
    await press('Turn ends');
    await expect.poll(() => now().innerText()).toMatch(/^18:00\s+25 in use/);
    // What is read begins under the bars of the page, and the map lies under its own tab.
    await expect.poll(async () => (await boxAtRest(now())).y).toBeLessThan(160);
    const tabs = page.getByRole('navigation', { name: 'Sheets' });
    await tabs.getByRole('button', { name: 'Map' }).click();
    await expect.poll(() => now().isVisible()).toBe(false);
    await tabs.getByRole('button', { name: 'At the field' }).click();
    await expect.poll(() => now().innerText()).toMatch(/25 arrival/);
    // A notice takes its room from what is read: the tabs stay on the page.
    await page.getByRole('button', { name: 'Menu', exact: true }).click();
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'broken.geojson',
      mimeType: 'application/json',
      buffer: Buffer.from('{'),
    });
    await page.getByText('broken.geojson was not opened').waitFor();
    const foot = async () => {
      const { y, height } = await boxAtRest(tabs);
      return y + height;
    };
    await expect.poll(foot).toBeLessThanOrEqual(740);
    await page.getByRole('button', { name: 'Dismiss' }).click();
  });

  it('[B321] walks along the fence with the position: at no spot, then at the spot that is reached', async () => {
    await move(odd, 5);
    await press('Where am I');
    await expect.poll(() => status().innerText()).toContain('At no spot of the survey, known to 5 m');
    const first = () => now().innerText();
    await expect.poll(first).toMatch(/25 arrival\s+\d+ mm at \d+ m/);
    // Step by step to Orchard Path.
    for (let step = 1; step <= 3; step++) {
      const share = step / 3;
      await move(
        {
          longitude: odd.longitude + (orchard.longitude - odd.longitude) * share,
          latitude: odd.latitude + (orchard.latitude - odd.latitude) * share,
        },
        5,
      );
    }
    await expect.poll(() => status().innerText()).toContain('At Orchard Path, east end, known to 5 m');
  });

  it('[B322] a position known to 500 m tells no lens; a better one does again', async () => {
    await move(odd, 500);
    await expect.poll(() => status().innerText()).toContain('known to 500 m only');
    await expect.poll(() => now().innerText()).not.toMatch(/ISO \d/);
    await expect.poll(() => now().getByRole('button', { name: 'Stand here' }).isDisabled()).toBe(true);
    await move(odd, 8);
    await expect.poll(() => now().innerText()).toMatch(/ISO \d/);
  });

  it('[B323] nothing of the position is kept or sent until a spot is made of it, in one tap', async () => {
    const trace = /18\.18813|50\.93371/;
    expect(trace.test(await keptText())).toBe(false);
    expect(requests.filter((url) => trace.test(decodeURIComponent(url)))).toEqual([]);
    await press('Stand here');
    await expect
      .poll(() =>
        now()
          .getByLabel('Spot')
          .evaluate((e) => (e as HTMLSelectElement).selectedOptions[0]?.text),
      )
      .toBe('Stood here, 18:00');
    await expect.poll(async () => trace.test(await keptText())).toBe(true);
    await page.keyboard.press('Control+z');
    await expect.poll(async () => trace.test(await keptText())).toBe(false);
  });

  it('[B324] turns the ends round, and a METAR sets them; an old one is told by its age', async () => {
    await now().getByLabel('Spot').selectOption({ label: 'Orchard Path, east end' });
    await press('Turn ends');
    await expect.poll(() => now().innerText()).toMatch(/^18:00\s+07 in use/);
    await press('Turn ends');
    await expect.poll(() => now().innerText()).toMatch(/^18:00\s+25 in use/);
    await now().getByText('Wind report').click();
    await now()
      .getByLabel('Paste a METAR; the ends follow it')
      .fill('METAR EPXX 211530Z 08012KT CAVOK 24/12 Q1018');
    await press('Use it');
    await expect.poll(() => now().innerText()).toMatch(/^18:00\s+07 in use\s+wind 30 min old/);
    await page.clock.setFixedTime('2026-06-21T19:10:05+02:00');
    await expect.poll(() => now().innerText()).toContain('wind 100 min old: no longer holds');
    await page.clock.setFixedTime('2026-06-21T18:00:20+02:00');
    await page.keyboard.press('Control+z');
  });

  it('[B325] what is pressed lies in the lower half, is 44 px high, and fits; axe finds nothing in any look', async () => {
    const boxes = await now()
      .locator('.press :is(button, select)')
      .evaluateAll((all) =>
        all.map((element) => {
          const { top, bottom, left, right, height } = element.getBoundingClientRect();
          return { top, bottom, left, right, height };
        }),
      );
    expect(boxes.length).toBeGreaterThan(5);
    for (const { top, bottom, left, right, height } of boxes) {
      expect(top).toBeGreaterThanOrEqual(370);
      expect(bottom).toBeLessThanOrEqual(740);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(360);
      expect(height).toBeGreaterThanOrEqual(44);
    }
    await page.evaluate(axe.source);
    for (const look of ['day', 'night', 'contrast']) {
      await page.evaluate((name) => (document.documentElement.dataset['look'] = name), look);
      const violations = await page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
        };
        return (await axe.run('.now')).violations.map(({ id }) => id);
      });
      expect(violations, look).toEqual([]);
    }
    await page.evaluate(() => (document.documentElement.dataset['look'] = 'day'));
  });

  it('[B326] standing still it works no more than once a second: nothing on the page changes', async () => {
    await press('Where am I');
    await move(orchard, 5);
    await expect.poll(() => status().innerText()).toContain('At Orchard Path');
    // What follows from having arrived may still come; what changes by itself changes in every two seconds.
    const changes = () =>
      page.evaluate(async () => {
        let count = 0;
        const observer = new MutationObserver((all) => (count += all.length));
        observer.observe(document.body, {
          subtree: true,
          childList: true,
          characterData: true,
          attributes: true,
        });
        // The view's own clock was set before this one: when this has struck twice, that has as well.
        let struck = 0;
        await new Promise<void>((done) => {
          const clock = setInterval(() => {
            if (++struck < 2) return;
            clearInterval(clock);
            done();
          }, 1000);
        });
        observer.disconnect();
        return count;
      });
    await expect.poll(changes).toBe(0);
  });

  it('[B328] turns an arrow to the path by the compass, and warns of the sun ahead', async () => {
    const { origin } = new URL(urlOf({ map: false }));
    await opened.context.grantPermissions(['geolocation', 'accelerometer', 'gyroscope', 'magnetometer'], {
      origin,
    });
    // Chromium's own override tells turns against nothing in particular; these are told against north.
    const turn = (alpha: number) =>
      page.evaluate((angle) => {
        const turns = { alpha: angle, beta: 0, gamma: 0, absolute: true };
        dispatchEvent(new DeviceOrientationEvent('deviceorientationabsolute', turns));
      }, alpha);
    const text = async (alpha: number) => {
      await turn(alpha);
      return now().innerText();
    };
    await press('Compass');
    // Lying flat, alpha 0 points to magnetic north: 6 degrees east of true north there.
    await expect.poll(() => text(0)).toContain('you face 006° true');
    await expect.poll(() => now().innerText()).toMatch(/turn (left|right) \d+°/);
    await expect.poll(() => now().innerText()).not.toContain('The sun is ahead');
    // At 18:00 the sun stands in the west, at some 275 degrees. Time stands still in this test: a later turn counts.
    await page.clock.setFixedTime('2026-06-21T18:00:40+02:00');
    await expect.poll(() => text(90)).toContain('The sun is ahead');
    await page.clock.setFixedTime('2026-06-21T18:00:20+02:00');
  });

  it('[B329] a position that is lost says since when, keeps what it told, and goes on by itself', async () => {
    await expect.poll(() => status().innerText()).toContain('At Orchard Path');
    const devtools = await opened.context.newCDPSession(page);
    // Without coordinates: position unavailable (Chrome DevTools protocol, Emulation).
    await devtools.send('Emulation.setGeolocationOverride', {});
    await expect.poll(() => status().innerText()).toContain('No new position: the last one is of 18:00');
    await expect.poll(() => now().innerText()).toMatch(/25 arrival\s+\d+ mm at \d+ m/);
    await devtools.detach();
    await move(orchard, 5);
    await expect.poll(() => status().innerText()).toContain('At Orchard Path');
  });

  it('[B330] the screen stays on while it is wished', async () => {
    await page.evaluate(() => {
      const held = { count: 0 };
      Object.assign(window, { held });
      Object.defineProperty(navigator.wakeLock, 'request', {
        value: () => {
          held.count++;
          const lock = new EventTarget();
          return Promise.resolve(
            Object.assign(lock, {
              release: () => {
                held.count--;
                lock.dispatchEvent(new Event('release'));
                return Promise.resolve();
              },
            }),
          );
        },
      });
    });
    const held = () => page.evaluate(() => (window as unknown as { held: { count: number } }).held.count);
    await press('Screen on');
    await expect.poll(held).toBe(1);
    await expect
      .poll(() => now().getByRole('button', { name: 'Screen on' }).getAttribute('aria-pressed'))
      .toBe('true');
    await press('Screen on');
    await expect.poll(held).toBe(0);
  });

  it('[B327] refused it says so and how to go on; left, it forgets the position', async () => {
    // Once it has gone by the device, pressing it again lets go of it.
    await press('Where am I');
    await opened.context.clearPermissions();
    await press('Where am I');
    await expect.poll(() => status().innerText()).toContain('The position was refused');
    await now().getByLabel('Spot').selectOption({ label: 'Mill Lane lay-by' });
    await expect.poll(() => status().innerText()).toContain('At Mill Lane lay-by');
    expect(opened.complaints).toEqual([]);
  });
});

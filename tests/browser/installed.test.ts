import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { serveStatically, type StaticServer } from '../support/static-server';
import { browserWith, patience, pixelRatio } from './page';
import { rename, surveyName } from './tabs';

/**
 * `map: false` leaves the map out: what is said and kept does not depend on it, and drawing it takes long. With
 * `drawn: false` the page alone goes without it until its routes are lifted, and the service worker stores it.
 */
async function visit(
  server: StaticServer,
  { map, drawn = map }: { map: boolean; drawn?: boolean },
): Promise<{ context: BrowserContext; page: Page }> {
  if (!map) alter(server, (path, text) => (path.includes('/map-view-') ? neverThere : text));
  const browser = await browserWith(true);
  const context = await browser.newContext({
    locale: 'en-GB',
    reducedMotion: 'reduce',
    viewport: { width: 1100, height: 800 },
    deviceScaleFactor: pixelRatio({ map }),
  });
  context.setDefaultTimeout(patience);
  const page = await context.newPage();
  if (map && !drawn)
    await page.route('**/map-view-*.js', (route) =>
      route.fulfill({ contentType: 'text/javascript', body: neverThere }),
    );
  await page.goto(server.url);
  await surveyName(page).waitFor();
  return { context, page };
}

const neverThere = 'await new Promise(() => undefined);';

function alter(server: StaticServer, change: StaticServer['alter']): void {
  const before = server.alter;
  server.alter = (path, text) => change(path, before(path, text));
}

/** Waits until the program is stored on the device and in charge of the page. */
const stored = (page: Page) =>
  page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (!serviceWorker.controller)
      await new Promise((changed) =>
        serviceWorker.addEventListener('controllerchange', changed, { once: true }),
      );
  });

/** The same build under another title, as a server has it after a new version was put there. */
function publishNext(server: StaticServer): void {
  alter(server, (path, text) => {
    if (path === '/index.html') return text.replace('<title>Sunside</title>', '<title>Sunside, next</title>');
    return path === '/sw.js' ? text.replace(/(url:"index.html",revision:")\w+/, '$1next') : text;
  });
}

const lookForUpdate = (page: Page) =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));

describe('the installed program', () => {
  it('[B140] starts without a network after the first visit, map, search and panels included', async () => {
    const server = await serveStatically();
    const { context, page } = await visit(server, { map: true, drawn: false });
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    await stored(page);
    await page.unrouteAll();
    await server.close();
    await page.goto(`${server.url}?from=home-screen`);
    await page.waitForSelector('[data-ready="true"]');
    await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
    // What is loaded late is there too: the catalogue, the time zones, a dialog.
    await page.getByRole('button', { name: 'Surveys' }).first().click();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Find airfield' }).click();
    await page.getByRole('combobox', { name: /Code, name or town/ }).fill('EGLL');
    await page
      .getByRole('option', { name: /Heathrow/ })
      .first()
      .click();
    await expect.poll(() => surveyName(page).inputValue()).toMatch(/Heathrow/);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('[B141] offers a new version; taking it keeps what was just typed, and leaves other tabs alone', async () => {
    const server = await serveStatically();
    const { context, page } = await visit(server, { map: false });
    await stored(page);
    const other = await context.newPage();
    await other.goto(server.url);
    await surveyName(other).waitFor();
    publishNext(server);
    await lookForUpdate(page);
    const start = page.getByRole('button', { name: 'Start it now' });
    await start.waitFor();
    await expect.poll(() => page.title()).toBe('Sunside');
    await rename(page, 'Typed before');
    // Still being typed when the button is pressed.
    await surveyName(page).fill('Typed just before');
    await start.click();
    await page.waitForFunction(() => document.title === 'Sunside, next');
    await expect.poll(() => surveyName(page).inputValue()).toBe('Typed just before');
    await other.getByText('started in another tab').waitFor();
    await expect.poll(() => other.title()).toBe('Sunside');
    await other.getByRole('button', { name: 'Start it now' }).click();
    await other.waitForFunction(() => document.title === 'Sunside, next');
    await context.close();
    await server.close();
  });

  it('[B142] asks nothing of other origins, and leaves what else lies on its own server alone', async () => {
    const server = await serveStatically();
    const tiles = await serveStatically();
    const { context, page } = await visit(server, { map: false });
    await stored(page);
    await page.evaluate(
      async (urls) => void (await Promise.allSettled(urls.map((url) => fetch(url, { mode: 'no-cors' })))),
      [`${tiles.url}icon.svg`, `${server.url}other/index.html`],
    );
    expect(tiles.asked).toEqual(['/icon.svg']);
    expect(server.asked).toContain('/other/index.html');
    // Nothing of another origin is kept either.
    const kept = await page.evaluate(async () => {
      const urls: string[] = [];
      for (const name of await caches.keys())
        for (const request of await (await caches.open(name)).keys()) urls.push(request.url);
      return urls;
    });
    expect(kept.length).toBeGreaterThan(10);
    expect(kept.filter((url) => !url.startsWith(server.url))).toEqual([]);
    await context.close();
    await Promise.all([server.close(), tiles.close()]);
  });
});

/**
 * How to write a browser test.
 *
 * - The built program runs in Chromium: `npm run build` first when a single file is run. One page a file (or a
 *   describe): `const opened = onePage({ map: false })` at its top opens it, puts it back to a first visit before each
 *   test, and closes it. Tests that build upon each other take `openPage` in a `beforeAll` and tidy up themselves, by
 *   undo for example: with the map that is the way, since a new start of it costs seconds.
 * - Without the map unless the test is about it: it is drawn in software, and each frame costs processor. Then choose
 *   the smallest page that shows what is asked (from 1081 px wide the panels lie beside the map; a phone is 360 x 740).
 * - Wait for what a person would see (`waitFor`, `expect.poll`), never for a time. `complaints` has what the console
 *   and the content security policy objected to: expect it to be empty once a file.
 * - To look at a page while writing: `await shot(page, 'wind-record')` puts a picture into `tests/browser/shots`, which
 *   is not kept in the repository. Take the line out again.
 * - What runs for more than 20 s on an idle machine belongs to `npm run thorough`: `it.skipIf(!thorough)`.
 */
import { resolve } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, inject } from 'vitest';
import { launchChromium } from '../support/chromium';

export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page complained about: errors of the console and uncaught ones. */
  readonly complaints: string[];
}

export interface OpenOptions {
  readonly width?: number;
  readonly height?: number;
  readonly touch?: boolean;
  /** What the device speaks. */
  readonly locale?: string;
  /** False leaves the map out, for what does not depend on it: drawing in software takes most of a test's time. */
  readonly map?: boolean;
  /** For the viewfinder without the map; else as `map`. */
  readonly webgl?: boolean;
  /** Hears every request that the page makes. */
  readonly onRequest?: (url: string) => void;
}

const browsers = new Map<boolean, Promise<Browser>>();

/** The browser of a test file, with WebGL or, at a fraction of the cost, without. */
function browserWith(webgl: boolean): Promise<Browser> {
  const known = browsers.get(webgl) ?? launchChromium({ webgl });
  browsers.set(webgl, known);
  return known;
}

/** Every page in a profile of its own. */
export async function openPage({
  width = 1280,
  height = 800,
  touch = false,
  locale = 'en-GB',
  map = true,
  webgl = map,
  onRequest,
}: OpenOptions = {}): Promise<Opened> {
  const context = await (
    await browserWith(webgl)
  ).newContext({
    viewport: { width, height },
    hasTouch: touch,
    locale,
    timezoneId: 'America/New_York',
    acceptDownloads: true,
    reducedMotion: 'reduce',
    // Each page would store the whole program first; tests/browser/installed.test.ts is about that.
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  // What the content security policy forbids is a fault, whichever test sees it.
  await page.addInitScript(() =>
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      console.error(`security policy: ${violatedDirective} forbids ${blockedURI}`),
    ),
  );
  // Without file access the program falls back to a download and an input, which a test can drive.
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
  });
  if (onRequest) page.on('request', (request) => onRequest(request.url()));
  if (!map) await leaveMapOut(context);
  await start(page, map);
  return { page, context, complaints };
}

async function start(page: Page, map: boolean): Promise<void> {
  await page.goto(inject('baseUrl'));
  if (map) await mapReady(page);
  else await page.getByLabel('Name of the survey').waitFor();
  // Type that arrives later moves what a test is about to take hold of.
  await page.evaluate(async () => void (await document.fonts.ready));
}

/** One page for the tests of a file or a describe: each finds it as on a first visit. */
export function onePage(options: OpenOptions = {}): Opened {
  let opened: Opened | null = null;
  let used = false;
  const there = (): Opened => {
    if (!opened) throw new Error('expected the page to be used within a test');
    return opened;
  };
  beforeAll(async () => {
    opened = await openPage(options);
  });
  beforeEach(async () => {
    if (used) await firstVisit(there(), options.map ?? true);
    used = true;
  });
  afterAll(() => opened?.context.close());
  return {
    get page() {
      return there().page;
    },
    get context() {
      return there().context;
    },
    get complaints() {
      return there().complaints;
    },
  };
}

/** Forgets all that the page has kept, and starts it again: at half of what a context of its own costs. */
async function firstVisit({ page, context, complaints }: Opened, map: boolean): Promise<void> {
  await forget(page, context);
  await start(page, map);
  complaints.length = 0;
}

/** Leaves the page and clears what it has kept on the device. */
export async function forget(page: Page, context: BrowserContext): Promise<void> {
  // The page's last words are written as it goes, and cleared with the rest.
  await page.goto('about:blank');
  const devtools = await context.newCDPSession(page);
  const { origin } = new URL(inject('baseUrl'));
  await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await devtools.detach();
}

/** A picture of the page for whoever writes a test; see the top of this file. */
export async function shot(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: resolve(import.meta.dirname, 'shots', `${name}.png`) });
}

/** The map's chunk never arrives, as on a very slow line; all else runs. */
export async function leaveMapOut(context: BrowserContext): Promise<void> {
  await context.route('**/map-view-*.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'await new Promise(() => undefined);' }),
  );
}

export async function closeBrowser(): Promise<void> {
  for (const browser of browsers.values()) await (await browser).close();
  browsers.clear();
}

const mapSelector = '[data-ready="true"]';

/** Waits until the map has drawn what it was given. */
export async function mapReady(page: Page): Promise<void> {
  await page.waitForSelector(mapSelector);
}

/** Pixel of the page at which a longitude and latitude lies, by web Mercator (EPSG:3857). */
export async function pixelOf(
  page: Page,
  [lng, lat]: readonly [number, number],
): Promise<{ x: number; y: number }> {
  const map = page.locator(mapSelector);
  const box = await map.boundingBox();
  const [centreLng, centreLat, zoom] = await map.evaluate((element) =>
    ['lng', 'lat', 'zoom'].map((key) => Number((element as HTMLElement).dataset[key])),
  );
  if (!box || centreLng === undefined || centreLat === undefined || zoom === undefined)
    throw new Error('expected the map on the page, with its camera in its data attributes');
  const size = 512 * 2 ** zoom;
  const worldX = (degrees: number) => (size * (degrees + 180)) / 360;
  const worldY = (degrees: number) => {
    const sin = Math.sin((degrees * Math.PI) / 180);
    return size * (0.5 - Math.log((1 + sin) / (1 - sin)) / (4 * Math.PI));
  };
  return {
    x: box.x + box.width / 2 + worldX(lng) - worldX(centreLng),
    y: box.y + box.height / 2 + worldY(lat) - worldY(centreLat),
  };
}

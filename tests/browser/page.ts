/**
 * How to write a browser test.
 *
 * - The built program runs in Chromium: `npm run build` first when a single file is run. One page a file (or a
 *   describe): `const opened = onePage({ map: false })` at its top opens it and puts it back to a first visit before
 *   each test. Tests that build upon each other take `openPage` in a `beforeAll` and tidy up themselves, by undo for
 *   example: with the map that is the way, since a new start of it costs seconds.
 * - Pages are handed back, by `done()` or when the file is over, and the next test that wants one of the kind gets it as
 *   on a first visit: at half of what another one costs. A test that changes what cannot be put back (the clock, a script
 *   before all others, the device's position) says `apart: true`, and its page is closed.
 * - Without the map unless the test is about it: it is drawn in software, and each frame costs processor. Then choose
 *   the smallest page that shows what is asked (from 1081 px wide the panels lie beside the map; a phone is 360 x 740).
 *   Such a page has half a px of the device to each of its own (`pixelRatio`): read a colour where more than 2 px have it.
 * - Wait for what a person would see (`waitFor`, `expect.poll`), never for a time; eslint refuses `expect(await ...)` of
 *   the page. What is compared later is read by `atRest`, where something stands by `boxAtRest`: parts of the page that
 *   arrive late change and move the others. Before keys are typed wait until the field has the focus (`hasFocus`).
 *   `complaints` has what the console and the content security policy objected to: expect it to be empty once a file.
 * - To look at a page while writing: `await shot(page, 'wind-record')` puts a picture into `tests/browser/shots`, which
 *   is not kept in the repository. Take the line out again.
 * - What runs for more than 20 s on an idle machine belongs to `npm run thorough`: `it.skipIf(!thorough)`.
 */
import { resolve } from 'node:path';
import type { Browser, BrowserContext, Locator, Page, Request } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, inject } from 'vitest';
import { launchChromium } from '../support/chromium';
import { surveyName } from './tabs';

export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What its pages complained about: errors of the console and uncaught ones. */
  readonly complaints: string[];
  /** Hands the page back for the next test, without the tabs that were opened beside it. */
  readonly done: () => Promise<void>;
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
  /** True for what cannot be put back afterwards: nobody has the page before or after. */
  readonly apart?: boolean;
  /** Hears every request that the page makes. */
  readonly onRequest?: (url: string) => void;
}

const browsers = new Map<boolean, Promise<Browser>>();

/** The browser of a worker, with WebGL or, at a fraction of the cost, without. Both end with their worker. */
export function browserWith(webgl: boolean): Promise<Browser> {
  const known = browsers.get(webgl) ?? launchChromium({ webgl, shell: true });
  browsers.set(webgl, known);
  return known;
}

interface Kept extends Pick<Opened, 'page' | 'context' | 'complaints'> {
  /** Of its kind the pages are alike, but for their size. */
  readonly kind: string | null;
  readonly map: boolean;
}
/** Pages in use, and pages that were handed back. */
const out = new Set<Kept>();
const spare: Kept[] = [];

/** A page in a profile of its own, as on a first visit. */
export async function openPage({
  width = 1280,
  height = 800,
  touch = false,
  locale = 'en-GB',
  map = true,
  webgl = map,
  apart = false,
  onRequest,
}: OpenOptions = {}): Promise<Opened> {
  const kind = apart ? null : JSON.stringify({ touch, locale, map, webgl });
  const at = kind === null ? -1 : spare.findLastIndex((kept) => kept.kind === kind);
  const back = spare.splice(at, at < 0 ? 0 : 1)[0];
  const kept = back ?? (await newPage({ touch, locale, map, webgl }, kind));
  out.add(kept);
  const { page, context, complaints } = kept;
  await page.setViewportSize({ width, height });
  const hear = (request: Request) => onRequest?.(request.url());
  if (back) await firstVisit(kept, hear);
  else {
    page.on('request', hear);
    await start(page, map);
  }
  const done = async () => {
    page.off('request', hear);
    await handBack(kept);
  };
  return { page, context, complaints, done };
}

/** ms. On a busy machine the map alone may take half a minute to start; what never comes is found out soon enough. */
export const patience = 90_000;

/** px of the device to a px of the page. The map's cost goes by them, and a quarter of them shows as much. */
export const pixelRatio = ({ map }: { readonly map: boolean }): number => (map ? 0.5 : 1);

async function newPage(
  { touch, locale, map, webgl }: Required<Pick<OpenOptions, 'touch' | 'locale' | 'map' | 'webgl'>>,
  kind: string | null,
): Promise<Kept> {
  const context = await (
    await browserWith(webgl)
  ).newContext({
    hasTouch: touch,
    deviceScaleFactor: pixelRatio({ map }),
    locale,
    timezoneId: 'America/New_York',
    acceptDownloads: true,
    reducedMotion: 'reduce',
    // Each page would store the whole program first; tests/browser/installed.test.ts is about that.
    serviceWorkers: 'block',
  });
  context.setDefaultTimeout(patience);
  const complaints: string[] = [];
  context.on('weberror', (error) => complaints.push(error.error().message));
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  // What the content security policy forbids is a fault, whichever test sees it.
  await context.addInitScript(() =>
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      console.error(`security policy: ${violatedDirective} forbids ${blockedURI}`),
    ),
  );
  // Without file access the program falls back to a download and an input, which a test can drive.
  await context.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
  });
  return { page: await context.newPage(), context, complaints, kind, map };
}

/** Another tab of a profile: it shares what is kept with the others. `before` runs in it before anything else. */
export async function openTab(context: BrowserContext, before?: () => void): Promise<Page> {
  const page = await context.newPage();
  if (before) await page.addInitScript(before);
  await start(page, false);
  return page;
}

/** Where a page starts, with the map or without. */
export const urlOf = ({ map }: { readonly map: boolean }): string => inject(map ? 'baseUrl' : 'bareUrl');

async function start(page: Page, map: boolean): Promise<void> {
  await page.goto(urlOf({ map }));
  if (map) await mapReady(page);
  else await surveyName(page).waitFor();
  // Type that arrives later moves what a test is about to take hold of.
  await page.evaluate(async () => void (await document.fonts.ready));
}

async function handBack(kept: Kept): Promise<void> {
  const { page, context, kind } = kept;
  if (!out.delete(kept)) return;
  if (kind === null || page.isClosed()) return context.close();
  for (const tab of context.pages()) if (tab !== page) await tab.close();
  await context.clearPermissions();
  await page.unrouteAll();
  await context.unrouteAll();
  await page.emulateMedia({ media: null, colorScheme: null, contrast: null, reducedMotion: 'reduce' });
  spare.push(kept);
}

/** At the end of each file, whatever became of its tests: tests/support/pages.ts. */
export async function closePages(): Promise<void> {
  for (const kept of [...out]) await handBack(kept);
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
    if (used) await firstVisit({ ...there(), map: options.map ?? true });
    used = true;
  });
  afterAll(() => opened?.done());
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
    done: () => there().done(),
  };
}

/** Forgets all that the page has kept, and starts it again: at half of what a context of its own costs. */
async function firstVisit(
  { page, context, complaints, map }: Pick<Kept, 'page' | 'context' | 'complaints' | 'map'>,
  hear?: (request: Request) => void,
): Promise<void> {
  await forget(page, context);
  complaints.length = 0;
  if (hear) page.on('request', hear);
  await start(page, map);
}

/** What a page keeps on the device. The browser's own memory of scripts and shaders is not what a visitor left. */
const storage = 'cookies,file_systems,indexeddb,local_storage,service_workers,cache_storage,storage_buckets';

/** Leaves the page and clears what it has kept on the device. */
export async function forget(page: Page, context: BrowserContext): Promise<void> {
  // The page's last words are written as it goes, and cleared with the rest.
  await page.goto('about:blank');
  const devtools = await context.newCDPSession(page);
  for (const map of [true, false]) {
    const { origin } = new URL(urlOf({ map }));
    await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: storage });
  }
  await devtools.detach();
}

/** A picture of the page for whoever writes a test; see the top of this file. */
export async function shot(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: resolve(import.meta.dirname, 'shots', `${name}.png`) });
}

/** From the next start on the map's part never arrives, as on a very slow line. */
export async function leaveMapOut(context: BrowserContext): Promise<void> {
  await context.route('**/map-view-*.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'await new Promise(() => undefined);' }),
  );
}

/** What is read once it stays the same, to be compared with later. */
export async function atRest<T>(read: () => Promise<T>): Promise<T> {
  let last = await read();
  let same = 0;
  await expect
    .poll(async () => {
      const now = await read();
      same = JSON.stringify(now) === JSON.stringify(last) ? same + 1 : 0;
      last = now;
      return same;
    })
    .toBeGreaterThanOrEqual(2);
  return last;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where an element stands, once it has stood there for some frames. px of the page. */
export const boxAtRest = (element: Locator): Promise<Box> =>
  element.evaluate(
    (box) =>
      new Promise<Box>((done) => {
        let last = '';
        let same = 0;
        const frame = () => {
          const { x, y, width, height } = box.getBoundingClientRect();
          const now = [x, y, width, height].join();
          same = now === last ? same + 1 : 0;
          last = now;
          if (same >= 2) done({ x, y, width, height });
          else requestAnimationFrame(frame);
        };
        requestAnimationFrame(frame);
      }),
  );

/** Waits until what is typed goes there. */
export async function hasFocus(field: Locator): Promise<void> {
  await expect.poll(() => field.evaluate((element) => element === document.activeElement)).toBe(true);
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
  const box = await boxAtRest(map);
  const [centreLng, centreLat, zoom] = await map.evaluate((element) =>
    ['lng', 'lat', 'zoom'].map((key) => Number((element as HTMLElement).dataset[key])),
  );
  if (centreLng === undefined || centreLat === undefined || zoom === undefined)
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

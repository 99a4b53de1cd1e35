import type { Browser, BrowserContext, Page } from 'playwright-core';
import { preview } from 'vite';
import { saveSurvey } from '../../src/survey/save';
import { launchChromium } from '../support/chromium.ts';
import { largeSurvey } from './large-survey.ts';

const runs = 5;

/** What a person waits for, in a real Chromium with software rendering: nothing here passes or fails. */
export async function inBrowser(): Promise<void> {
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || address === null)
    throw new Error('expected the preview server to have a port');
  const url = `http://127.0.0.1:${address.port}/`;
  const browser = await launchChromium();
  try {
    await coldStarts(browser, url);
    await openings(browser, url);
  } finally {
    await browser.close();
    await server.close();
  }
}

const newContext = (browser: Browser): Promise<BrowserContext> =>
  browser.newContext({ viewport: { width: 1280, height: 800 }, serviceWorkers: 'block', locale: 'en-GB' });

async function coldStarts(browser: Browser, url: string): Promise<void> {
  const figures: number[] = [];
  const maps: number[] = [];
  for (let i = 0; i < runs; i++) {
    // A context of its own has an empty cache.
    const context = await newContext(browser);
    const page = await context.newPage();
    await page.goto(url, { waitUntil: 'commit' });
    figures.push(
      await shownAfter(page, () => document.querySelector('aside .detail.figure')?.textContent !== undefined),
    );
    maps.push(await shownAfter(page, () => document.querySelector('[data-ready="true"]') !== null));
    await context.close();
  }
  console.log(`cold start, empty cache, own machine as server (${runs} starts)`);
  console.log(`  first figure shown    ${median(figures)}`);
  console.log(`  map drawn             ${median(maps)}`);
}

/** ms from the start of the navigation until something is on screen. */
async function shownAfter(page: Page, there: () => boolean): Promise<number> {
  const handle = await page.waitForFunction(there);
  await handle.dispose();
  return page.evaluate(
    () =>
      new Promise<number>((painted) =>
        requestAnimationFrame(() => setTimeout(() => painted(performance.now()))),
      ),
  );
}

async function openings(browser: Browser, url: string): Promise<void> {
  const text = saveSurvey(largeSurvey());
  const context = await newContext(browser);
  const page = await context.newPage();
  await page.addInitScript(() => void Reflect.deleteProperty(window, 'showOpenFilePicker'));
  const shown: number[] = [];
  const blocked: number[] = [];
  for (let i = 0; i < runs; i++) {
    await page.goto(url);
    await page.waitForSelector('[data-ready="true"]');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).first().click(),
    ]);
    await page.evaluate(() => {
      const tasks: number[] = [];
      new PerformanceObserver((list) => list.getEntries().forEach((e) => tasks.push(e.duration))).observe({
        entryTypes: ['longtask'],
      });
      Object.assign(window, { tasks });
    });
    const from = await page.evaluate(() => performance.now());
    await chooser.setFiles({
      name: 'large.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(text),
    });
    const to = await shownAfter(
      page,
      () =>
        document.querySelector<HTMLInputElement>('[aria-label="Name of the survey"]')?.value ===
        'Bench field',
    );
    shown.push(to - from);
    blocked.push(
      await page.evaluate(
        () =>
          new Promise<number>((rest) =>
            setTimeout(
              () => rest((window as unknown as { tasks: number[] }).tasks.reduce((a, b) => a + b, 0)),
              1000,
            ),
          ),
      ),
    );
  }
  await context.close();
  console.log(`open a survey of 5,000 features in the page (${runs} times)`);
  console.log(`  file chosen to painted ${median(shown)}`);
  console.log(`  main thread busy       ${median(blocked)}, in tasks of 50 ms and more, the map's included`);
}

function median(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (i: number) => `${Math.round(sorted[i] ?? NaN)} ms`;
  return `median ${at(Math.floor(sorted.length / 2))}, longest ${at(sorted.length - 1)}`;
}

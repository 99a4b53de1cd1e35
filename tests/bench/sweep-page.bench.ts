import type { Browser, Page } from 'playwright-core';
import { preview } from 'vite';
import { launchChromium } from '../support/chromium.ts';
import { longestTasks, type TracedPage } from './traced-page.ts';

const runs = 3;
const budgetSketch = 100;
const budgetTask = 16;
/** ms that a pointer rests on the button before it is pressed, and that a page has to come to rest. */
const resting = 1500;

/**
 * Where to stand in a real Chromium, on the sample site, from the click to the first list. The map is drawn in software, which takes
 * a multiple of all else: so the same is asked of the page without the map too. Processor time of the main thread says what
 * the page costs, whatever else the machine does; the clock says what a person on this machine waits.
 */
export async function sweepPage(): Promise<void> {
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || address === null)
    throw new Error('expected the preview server to have a port');
  console.log(`where to stand: from the click to the first list (${runs} pages each, median and least)`);
  for (const map of [false, true]) {
    const browser = await launchChromium({ webgl: map });
    try {
      for (const comes of ['rests', 'at once', 'too soon'] as const)
        await asked(browser, `http://127.0.0.1:${address.port}/`, { map, comes });
    } finally {
      await browser.close();
    }
  }
  await server.close();
}

interface How {
  readonly map: boolean;
  readonly comes: keyof typeof coming;
}

/** How the pointer comes to the button. What is `too soon` finds nothing prepared: the page has not come to rest. */
const coming = {
  rests: 'the pointer on the button before',
  'at once': 'clicked at once',
  'too soon': 'clicked at once, before the page is at rest',
};

async function asked(browser: Browser, url: string, how: How): Promise<void> {
  const seen: TracedPage[] = [];
  for (let i = 0; i < runs; i++) seen.push(await askedOnce(browser, url, how));
  console.log(`  ${how.map ? 'with the map' : 'without the map'}, ${coming[how.comes]}`);
  const row = (what: string, of: (page: TracedPage) => number, budget?: number) => {
    const all = seen.map(of).sort((a, b) => a - b);
    const [least = NaN, median = NaN] = [all[0], all[Math.floor(all.length / 2)]];
    const against = budget === undefined ? '' : `; budget ${budget} ms${least > budget ? ' OVER' : ''}`;
    console.log(`    ${what.padEnd(44)}${median.toFixed(0)} ms, ${least.toFixed(0)} ms${against}`);
  };
  row('sketch on the screen, by the clock', ({ painted }) => painted, budgetSketch);
  row('  main thread until then, processor time', ({ busy }) => busy);
  if (how.map) row('  of which in the map library', ({ busyInMap }) => busyInMap);
  row('longest task until the list, processor time', ({ longest }) => longest, budgetTask);
  if (how.map) row('  without what the map library does in it', ({ longestOwn }) => longestOwn, budgetTask);
}

async function askedOnce(browser: Browser, url: string, { map, comes }: How): Promise<TracedPage> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    serviceWorkers: 'block',
    locale: 'en-GB',
  });
  await context.addInitScript(watchSketch, map);
  if (comes === 'too soon')
    await context.addInitScript(() => Reflect.deleteProperty(window, 'requestIdleCallback'));
  if (!map)
    await context.route('**/map-view-*.js', (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("left out");' }),
    );
  const page = await context.newPage();
  await page.goto(url);
  await page.waitForSelector(map ? '[data-ready="true"]' : '[aria-label="Name of the survey"]');
  await page.waitForTimeout(resting);
  const box = await page.getByRole('button', { name: 'Where to stand' }).boundingBox();
  if (!box) throw new Error('expected the button of the view on the page');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  if (comes === 'rests') await page.waitForTimeout(resting);
  const traced = await tracedFrom(browser, page);
  await context.close();
  return traced;
}

async function tracedFrom(browser: Browser, page: Page): Promise<TracedPage> {
  const categories = ['blink.user_timing', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];
  await browser.startTracing(page, { categories });
  await page.mouse.down();
  await page.mouse.up();
  await page.locator('section.places li p').first().waitFor({ timeout: 120_000 });
  await page.evaluate(() => performance.mark('bench-list'));
  return longestTasks(await browser.stopTracing());
}

/** Runs in the page: marks the click, and the frame behind the one that shows the sketch. With the map it lies there as a texture. */
function watchSketch(map: boolean): void {
  let isMarked = false;
  const mark = () => {
    if (isMarked) return;
    isMarked = true;
    requestAnimationFrame(() => setTimeout(() => performance.mark('bench-painted')));
  };
  addEventListener('click', ({ timeStamp }) => performance.mark('bench-click', { startTime: timeStamp }), {
    capture: true,
    once: true,
  });
  if (!map) {
    const look = () => document.querySelector('section.places[data-sketch="true"]') && mark();
    new MutationObserver(look).observe(document, { subtree: true, childList: true, attributes: true });
    return;
  }
  type Drawing = Record<'texImage2D' | 'texSubImage2D', (this: unknown, ...of: unknown[]) => void>;
  const drawing = WebGL2RenderingContext.prototype as unknown as Drawing;
  for (const name of ['texImage2D', 'texSubImage2D'] as const) {
    const drawn = drawing[name];
    drawing[name] = function (...of) {
      if (of.at(-1) instanceof HTMLCanvasElement) mark();
      Reflect.apply(drawn, this, of);
    };
  }
}

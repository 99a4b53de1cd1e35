import { build, preview } from 'vite';
import { launchChromium } from '../support/chromium.ts';
import { cityExtract } from './city-extract.ts';

const megabytes = 30;

interface Phase {
  readonly seconds: number;
  /** ms of the longest task of the main thread. */
  readonly longest: number;
}

/**
 * A city's extract dropped on the page, previewed and taken over, in Chromium: how long it takes, and how long the page
 * is deaf at most. The map is drawn in software here, which is part of the second figure.
 */
export async function bringInCity(): Promise<void> {
  await build({ logLevel: 'error' });
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'error' });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || address === null) throw new Error('expected a port');
  const browser = await launchChromium();
  try {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    const city = cityExtract(megabytes, [18.1734, 50.9287]);
    await page.route('**/city.osm', (route) => route.fulfill({ contentType: 'text/xml', body: city }));
    await page.goto(`http://127.0.0.1:${address.port}/`);
    await page.waitForSelector('[data-ready="true"]');
    await page.evaluate(async () => {
      const blob = await (await fetch('city.osm')).blob();
      const long: number[] = [];
      new PerformanceObserver((list) => long.push(...list.getEntries().map((e) => e.duration))).observe({
        type: 'longtask',
      });
      Object.assign(globalThis, { bench: { file: new File([blob], 'city.osm'), long } });
    });
    const measured = async (act: () => Promise<void>): Promise<Phase> => {
      await page.evaluate(
        () => ((globalThis as unknown as { bench: { long: number[] } }).bench.long.length = 0),
      );
      const from = performance.now();
      await act();
      const seconds = (performance.now() - from) / 1000;
      const long = await page.evaluate(async () => {
        // The observer hears of a task after it.
        await new Promise((resolve) => setTimeout(resolve, 500));
        return [...(globalThis as unknown as { bench: { long: number[] } }).bench.long];
      });
      return { seconds, longest: Math.max(0, ...long) };
    };
    const take = page.getByRole('button', { name: /^Bring .* things in$/ });
    const read = await measured(async () => {
      await page.evaluate(() => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add((globalThis as unknown as { bench: { file: File } }).bench.file);
        window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
      });
      await take.waitFor({ timeout: 120_000 });
    });
    const words = (await take.innerText()).replace(/^Bring (.*) in$/, '$1');
    const taken = await measured(async () => {
      await take.click();
      await page.getByText('new in this survey').waitFor();
    });
    const row = (what: string, { seconds, longest }: Phase) =>
      console.log(
        `  ${what.padEnd(21)} ${seconds.toFixed(1)} s, longest main-thread task ${longest.toFixed(0)} ms`,
      );
    console.log(
      `bring in an extract of ${(city.length / 1e6).toFixed(0)} MB (${words}; in Chromium, a worker reads)`,
    );
    row('read and preview', read);
    row('take over and draw', taken);
  } finally {
    await browser.close();
    await server.close();
  }
}

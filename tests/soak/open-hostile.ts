import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

export interface HostileFile {
  readonly name: string;
  readonly text: string;
}

export interface Outcome {
  /** What the page says of it, "" for nothing. */
  readonly notice: string;
  /** Name of the survey that is open afterwards. */
  readonly survey: string;
  /** ms of the longest task of the page's main thread, and of all that were longer than 50 ms together. */
  readonly longest: number;
  readonly blocked: number;
  /** ms until the page had said something and come to rest. */
  readonly took: number;
}

declare global {
  interface Window {
    longTasks: number[];
  }
}

/** Before the page's own script: writes down every task of 50 ms and more (W3C Long Tasks API). */
export async function watchLongTasks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.longTasks = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) window.longTasks.push(duration);
    }).observe({ entryTypes: ['longtask'] });
  });
}

/** Opens a file by the page's own button and waits until it is shown or refused and the map is at rest. */
export async function openHostile(page: Page, { name, text }: HostileFile): Promise<Outcome> {
  const path = join(tmpdir(), `sunside-hostile-${process.pid}.geojson`);
  await writeFile(path, text);
  await page.evaluate(() => {
    window.longTasks.length = 0;
  });
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).first().click(),
  ]);
  const from = Date.now();
  await chooser.setFiles(path);
  // Until it is shown or refused: not while it is being read.
  let seen = await seenOn(page);
  while (seen.notice.startsWith('Reading') || (seen.notice === '' && seen.survey !== name)) {
    await page.waitForTimeout(50);
    seen = await seenOn(page);
  }
  // Two frames later all that follows is on screen.
  await page.evaluate(
    () =>
      new Promise((rest) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(rest, 200)))),
  );
  const took = Date.now() - from;
  const tasks = await page.evaluate(() => window.longTasks);
  return {
    ...(await seenOn(page)),
    longest: Math.round(Math.max(0, ...tasks)),
    blocked: Math.round(tasks.reduce((sum, ms) => sum + ms, 0)),
    took,
  };
}

const seenOn = (page: Page): Promise<Pick<Outcome, 'notice' | 'survey'>> =>
  page.evaluate(() => ({
    notice: [...document.querySelectorAll('[aria-live="polite"] .banner p')].at(-1)?.textContent ?? '',
    survey: document.querySelector<HTMLInputElement>('[aria-label="Name of the survey"]')?.value ?? '',
  }));

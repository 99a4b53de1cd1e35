import type { Page } from 'playwright-core';
import { pixelOf } from '../browser/page.ts';
import { rename, statusOf } from '../browser/tabs.ts';
import type { EditLog } from './edit-log.ts';

export interface Script {
  readonly random: () => number;
  /** Unlike that of any other run. */
  readonly mark: string;
  /** The spot can be dragged: the map is there. */
  readonly map: boolean;
  readonly latitude: number;
}

/** Edits the survey until the browser is killed under it: renames, drags, pauses, some waiting for "kept". */
export async function editOn(
  page: Page,
  log: EditLog,
  { random, mark, map, latitude }: Script,
): Promise<void> {
  for (let i = 1; ; i++) {
    const name = `${mark} edit ${i}`;
    await log.make({ name }, () => rename(page, name));
    if (random() < 0.3) await waitUntilKept(page, log);
    else await page.waitForTimeout(random() * 500);
    if (map && random() < 0.5) await drag(page, log, latitude, random);
  }
}

async function waitUntilKept(page: Page, log: EditLog): Promise<void> {
  while ((await statusOf(page)) !== 'Kept on this device') await page.waitForTimeout(20);
  log.keptSoFar();
}

/** Drags the spot to the side, for up to two seconds: changes come faster than they can be written. */
async function drag(page: Page, log: EditLog, latitude: number, random: () => number): Promise<void> {
  const from = await pixelOf(page, [log.last.lng, latitude]);
  const beside = await pixelOf(page, [log.last.lng + 0.001, latitude]);
  const perPixel = 0.001 / (beside.x - from.x);
  const start = log.last.lng;
  // Back and forth about the middle of the map, so that the spot never leaves it.
  const { width } = page.viewportSize() ?? { width: 1280 };
  const step = from.x < width / 2 ? 3 : -3;
  const moves = 5 + Math.floor(random() * 40);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 1; i <= moves; i++) {
    const x = from.x + i * step;
    await log.make({ lng: start + i * step * perPixel }, () => page.mouse.move(x, from.y));
    await page.waitForTimeout(random() * 40);
  }
  await page.mouse.up();
}

import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { mapReady } from '../browser/page.ts';
import { surveyName } from '../browser/tabs.ts';
import { seeded } from '../support/tolerance.ts';
import { EditLog, type Loss, type Said } from './edit-log.ts';
import { startMortal, type MortalBrowser } from './mortal-browser.ts';
import { editOn } from './scripted-editing.ts';

export interface Kill extends Loss {
  /** ms from the first edit to the kill. */
  readonly after: number;
}

export interface KillOptions {
  readonly url: string;
  readonly kills: number;
  readonly seed: number;
  /** With the map, spots are dragged too; without it a start takes a tenth of the time. */
  readonly map: boolean;
  /** ms that a run is edited at least and at most before the kill. */
  readonly between: readonly [number, number];
}

interface Kept extends Said {
  readonly latitude: number;
}

interface File {
  readonly sunside: { readonly site: { readonly name: string } };
  readonly features: readonly {
    readonly id: string;
    readonly geometry: { readonly coordinates: [number, number] };
  }[];
}

/** The spot that is dragged: the car park's deck of the sample site, in the middle of the map. */
const spotId = 's2w6bn';

function saidBy(text: string): Kept {
  const { sunside, features } = JSON.parse(text) as File;
  const spot = features.find(({ id }) => id === spotId);
  if (!spot) throw new Error(`expected the spot ${spotId} in the survey`);
  const [lng, latitude] = spot.geometry.coordinates;
  return { name: sunside.site.name, lng, latitude };
}

/**
 * Edits a survey in a real browser, kills all its processes at a random moment, starts it again on the same
 * profile, and compares what is kept with the log of edits; then edits on, and so forth.
 */
export async function* killAgainAndAgain({
  url,
  kills,
  seed,
  map,
  between,
}: KillOptions): AsyncGenerator<Kill> {
  const random = seeded(seed);
  const profile = await mkdtemp(join(tmpdir(), 'sunside-soak-'));
  let browser = await startMortal(profile);
  try {
    let page = await openEditor(browser, url, map);
    for (let i = 1; i <= kills; i++) {
      const start = await shownBy(page);
      const log = new EditLog(start);
      const after = between[0] + random() * (between[1] - between[0]);
      const begun = Date.now();
      const editing = editOn(page, log, { random, mark: `Run ${seed}.${i}`, map, latitude: start.latitude });
      const failure = await Promise.race([editing.then(String, String), later(after)]);
      if (failure !== null) throw new Error(`expected the editing to go on, it ended: ${failure}`);
      const killedAt = Date.now();
      await browser.kill();
      await editing.catch(() => undefined);
      browser = await startMortal(profile);
      page = await openEditor(browser, url, map);
      const kept = await shownBy(page);
      yield { after: killedAt - begun, ...log.lossOf(kept, killedAt) };
    }
  } finally {
    await browser.kill();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function openEditor({ context }: MortalBrowser, url: string, map: boolean): Promise<Page> {
  if (!map) {
    await context.route('**/map-view-*.js', (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'await new Promise(() => undefined);' }),
    );
    // The service worker would hand out the map itself, past the route.
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  }
  const page = await context.newPage();
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(url);
  if (map) await mapReady(page);
  else await surveyName(page).waitFor();
  return page;
}

/** What the page shows, checked against what is kept: the record read past the program. */
async function shownBy(page: Page): Promise<Kept> {
  const shown = await surveyName(page).inputValue();
  const text = await page.evaluate(
    () =>
      new Promise<string | null>((resolve, reject) => {
        const opening = indexedDB.open('sunside');
        opening.onerror = () => reject(new Error('expected the database to open'));
        opening.onsuccess = () => {
          const all = opening.result.transaction('surveys').objectStore('surveys').getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve((all.result as { text: string }[])[0]?.text ?? null);
          };
        };
      }),
  );
  const said = saidBy(text ?? (await readFile(sample, 'utf8')));
  if (said.name !== shown)
    throw new Error(`expected the page to show what is kept, "${said.name}", got "${shown}"`);
  return said;
}

const sample = resolve(import.meta.dirname, '../../sample-sites/tolverby.geojson');

const later = (ms: number) => new Promise<null>((resolve) => setTimeout(() => resolve(null), ms));

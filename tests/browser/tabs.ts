import type { Browser, BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { launchChromium } from '../support/chromium';
import { forget, leaveMapOut } from './page';

let browser: Promise<Browser> | null = null;

export interface Profile {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What the pages complained about: errors of the console and uncaught ones. */
  readonly complaints: string[];
  /** Hands the profile back for the next test, without the tabs that were opened beside its first. */
  readonly done: () => Promise<void>;
}

/** Profiles that were handed back, by the size of their pages. */
const spare = new Map<string, Profile>();

/** A profile with one tab, as new: one that was handed back and forgets all it kept, or else another. */
export async function openProfile({ width = 1280, height = 800 } = {}): Promise<Profile> {
  const size = `${width} ${height}`;
  const back = spare.get(size);
  if (!back) return newProfile(width, height);
  spare.delete(size);
  await forget(back.page, back.context);
  await start(back.page);
  back.complaints.length = 0;
  return back;
}

/**
 * A browser profile of its own with one tab. Its pages leave the map out: what is kept does not depend on it,
 * and drawing it in software takes most of a test's time.
 */
async function newProfile(width: number, height: number): Promise<Profile> {
  browser ??= launchChromium({ webgl: false });
  const context = await (
    await browser
  ).newContext({
    viewport: { width, height },
    locale: 'en-GB',
    timezoneId: 'America/New_York',
    acceptDownloads: true,
    reducedMotion: 'reduce',
    // It would hand out the map itself, past the route below.
    serviceWorkers: 'block',
  });
  await leaveMapOut(context);
  await context.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
  });
  const complaints: string[] = [];
  context.on('weberror', (error) => complaints.push(error.error().message));
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const page = await openTab(context);
  const profile: Profile = {
    context,
    page,
    complaints,
    done: async () => {
      for (const tab of context.pages()) if (tab !== page) await tab.close();
      spare.set(`${width} ${height}`, profile);
    },
  };
  return profile;
}

/** Another tab of a profile: it shares what is kept with the others. `before` runs in it before anything else. */
export async function openTab(context: BrowserContext, before?: () => void): Promise<Page> {
  const page = await context.newPage();
  if (before) await page.addInitScript(before);
  await start(page);
  return page;
}

async function start(page: Page): Promise<void> {
  await page.goto(inject('baseUrl'));
  await surveyName(page).waitFor();
}

export async function closeProfiles(): Promise<void> {
  await (await browser)?.close();
  browser = null;
  spare.clear();
}

export const surveyName = (page: Page) => page.getByLabel('Name of the survey');

/** Renames the open survey: an edit like any other. */
export async function rename(page: Page, name: string): Promise<void> {
  await surveyName(page).fill(name);
  await surveyName(page).press('Enter');
}

export const statusOf = (page: Page): Promise<string> =>
  page.locator('header').getByRole('status').innerText();

import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { mapReady } from './page';

/** Another tab of the same browser profile: it shares what is kept with the first one. */
export async function anotherTab(context: BrowserContext, before?: () => void): Promise<Page> {
  const page = await context.newPage();
  if (before) await page.addInitScript(before);
  await page.goto(inject('baseUrl'));
  await mapReady(page);
  return page;
}

export const surveyName = (page: Page) => page.getByLabel('Name of the survey');

/** Renames the open survey: an edit like any other. */
export async function rename(page: Page, name: string): Promise<void> {
  await surveyName(page).fill(name);
  await surveyName(page).press('Enter');
}

export const statusOf = (page: Page): Promise<string> =>
  page.locator('header').getByRole('status').innerText();

import type { Page } from 'playwright-core';

export const surveyName = (page: Page) => page.getByLabel('Name of the survey');

/** Renames the open survey: an edit like any other. */
export async function rename(page: Page, name: string): Promise<void> {
  await surveyName(page).fill(name);
  await surveyName(page).press('Enter');
}

export const statusOf = (page: Page): Promise<string> =>
  page.locator('header').getByRole('status').innerText();

import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { atRest, openPage, type Opened } from './page';

let opened: Opened;
let page: Page;
beforeAll(async () => {
  opened = await openPage({ map: false, height: 900 });
  page = opened.page;
});
const right = () => page.getByRole('complementary', { name: 'What is selected' });
const problems = () => page.getByText(/^\d+ problems?$/);
const line = (name: string) => page.locator('button.item', { hasText: name });

const complaintsOfAxe = async (where: string): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async (within) => {
    const { axe } = window as unknown as {
      axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
    };
    return (await axe.run(within)).violations.map(({ id }) => id);
  }, where);
};

describe('may I stand there?', () => {
  it('[B313] a refusal stands on the badge, in list and panel, and an answer that waits is a doubt', async () => {
    await line('Mill Lane lay-by').click();
    await right().getByLabel('Answer', { exact: true }).selectOption('refused');
    await expect.poll(() => line('Mill Lane lay-by').innerText()).toContain('forbidden');
    await expect.poll(() => right().locator('.badge').first().innerText()).toBe('forbidden');
    await expect.poll(() => problems().count()).toBe(0);
    await right().getByLabel('Answer', { exact: true }).selectOption('waiting');
    await right().getByLabel('Asked on').fill('2026-06-01');
    await expect.poll(() => right().locator('.badge').first().innerText()).toBe('ask: check first');
    await problems().click();
    await expect
      .poll(() => page.getByText('asked for on 2026-06-01; there is no answer yet').count())
      .toBeGreaterThan(0);
    await expect.poll(() => complaintsOfAxe('aside.right')).toEqual([]);
  });

  it('[B314] writes the request from the plan, and what I say of myself is in no survey', async () => {
    await right().getByRole('button', { name: 'Write a request' }).click();
    const dialog = page.getByRole('dialog', { name: 'A request to the office' });
    const letter = dialog.getByLabel('Change what you like before you send it');
    await dialog.getByLabel('Your name').fill('Xanthippe Probe');
    await dialog.getByLabel('Vehicle').fill('yellow van QQ 77');
    await dialog.getByLabel('Vehicle').press('Tab');
    await expect.poll(() => letter.inputValue()).toContain('yellow van QQ 77');
    const text = await atRest(() => letter.inputValue());
    expect(text).toMatch(/^To Tolverby airfield office, main gate/);
    expect(text).toMatch(/- Mill Lane lay-by, 07:15–11:45 and 13:50–15:35\n {2}Position \(WGS84\): 50\.93/);
    expect(text).toContain('https://www.openstreetmap.org/?mlat=50.93059&mlon=18.19586');
    await letter.fill(`${text}\nP. S. Thank you.`);
    await expect
      .poll(async () =>
        decodeURIComponent((await dialog.getByRole('link', { name: 'Mail' }).getAttribute('href')) ?? ''),
      )
      .toContain('P. S. Thank you.');
    await expect.poll(() => complaintsOfAxe('dialog[open]')).toEqual([]);
    // Closed by mistake: what was changed is still there, and so it is on a page that becomes narrow.
    await dialog.getByRole('button', { name: 'Close' }).click();
    await right().getByRole('button', { name: 'Write a request' }).click();
    await expect.poll(() => letter.inputValue()).toBe(`${text}\nP. S. Thank you.`);
    await expect.poll(() => dialog.innerText()).toContain('It is kept until you leave this page');
    await page.setViewportSize({ width: 360, height: 740 });
    await expect.poll(() => right().isVisible()).toBe(false);
    await expect.poll(() => letter.isVisible()).toBe(true);
    await page.setViewportSize({ width: 1280, height: 900 });
    await dialog.getByRole('button', { name: 'Write it anew' }).click();
    await expect.poll(() => letter.inputValue()).toBe(text);
    await dialog.getByRole('button', { name: 'I have asked: note it' }).click();
    await expect.poll(() => dialog.getByRole('status').innerText()).toContain('waiting for an answer');
    await dialog.getByRole('button', { name: 'Close' }).click();

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    const saved = await readFile(await download.path(), 'utf8');
    expect(saved).toContain('"waiting"');
    expect(saved).not.toMatch(/Xanthippe|QQ 77/);
    // They are there again for the next letter.
    await expect.poll(() => page.evaluate(() => localStorage.getItem('sunside-own'))).toContain('Xanthippe');
  });

  it('[B315] where the field forbids photography the plan is empty and says why, and so does the list of problems', async () => {
    await right().getByRole('button', { name: 'Close', exact: true }).click();
    await right().getByLabel('Photography').selectOption('forbidden');
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    const plan = page.getByRole('region', { name: 'Plan' });
    await expect.poll(() => plan.innerText()).toContain('the field forbids photography');
    await expect
      .poll(() => page.getByText('The field forbids photography: no spot is proposed.').count())
      .toBeGreaterThan(0);
    expect(opened.complaints).toEqual([]);
  });
});

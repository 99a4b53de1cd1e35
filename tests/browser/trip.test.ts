import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { onePage } from './page';

const opened = onePage({ map: false });
const sample = await readFile('sample-sites/tolverby.geojson', 'utf8');
interface Field {
  readonly sunside: { readonly site: object };
  readonly features: readonly object[];
}

/** The sample site under another name: its list of movements is left out. `more`: other members. */
function field(name: string, more: object = {}): { name: string; mimeType: string; buffer: Buffer } {
  const survey = JSON.parse(sample) as Field;
  const { movements: _left, ...sunside } = survey.sunside as Record<string, unknown>;
  const site = { ...survey.sunside.site, name };
  const text = JSON.stringify({ ...survey, sunside: { ...sunside, ...more, site } });
  return { name: `${name}.geojson`, mimeType: 'application/geo+json', buffer: Buffer.from(text) };
}
const fields = [field('Airport'), field('Strip'), field('Forest', { rules: { photography: 'forbidden' } })];

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Which field' });
async function keepThree(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Surveys', exact: true }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Import files' }).click(),
  ]);
  await chooser.setFiles(fields);
  await page.getByText('3 surveys are in the list now.').first().waitFor();
  await page.getByRole('dialog', { name: 'Surveys' }).getByRole('button', { name: 'Close' }).click();
}
async function compare(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await page.getByRole('button', { name: 'Which field', exact: true }).click();
  for (const name of ['Airport', 'Strip', 'Forest'])
    await dialog(page)
      .getByRole('checkbox', { name: new RegExp(`^${name}`) })
      .check();
  await dialog(page).getByLabel('Day', { exact: true }).fill('2026-06-20');
  await dialog(page).getByRole('button', { name: 'Compare', exact: true }).click();
}
const ranked = (page: Page) => dialog(page).locator('ol > li');
const unranked = (page: Page) => dialog(page).getByRole('list', { name: 'Not ranked' }).locator('> li');

describe('which field on Saturday', () => {
  it('[B267] three fields: never ranked by light alone, ranked by good passes; a trip as calendar and sheet', async () => {
    const { page, complaints } = opened;
    await keepThree(page);
    await compare(page);
    // Only where photography is forbidden something is known: that alone makes no order.
    await expect.poll(() => unranked(page).count()).toBe(3);
    await expect.poll(() => ranked(page).count()).toBe(0);
    for (const [name, perHour] of [
      ['Strip', '2'],
      ['Airport', '30'],
    ] as const) {
      const row = dialog(page).getByRole('listitem').filter({ hasText: name }).first();
      await row.getByLabel('Movements an hour').fill(perHour);
      await row.getByLabel('Movements an hour').press('Enter');
    }
    await expect.poll(() => ranked(page).count()).toBe(3);
    const order = () => ranked(page).locator('strong').allInnerTexts();
    await expect.poll(order).toEqual(['Airport', 'Strip', 'Forest']);
    await expect
      .poll(() => ranked(page).nth(0).innerText())
      .toMatch(/good minutes × 30 movements an hour \(as typed\)/);
    await expect.poll(() => ranked(page).nth(2).innerText()).toContain('forbids photography');
    for (const name of ['Airport', 'Strip'])
      await dialog(page)
        .getByRole('button', { name: `Into the trip: ${name}` })
        .press('Enter');
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
      };
      return (await axe.run('dialog[open]')).violations.map(({ id }) => id);
    });
    expect(violations).toEqual([]);
    const trip = dialog(page).getByRole('region', { name: 'The trip' });
    await expect.poll(() => trip.innerText()).toContain('one of them is cut short');
    // The strip on the next day instead: three fields and days in one trip.
    await dialog(page).getByRole('button', { name: 'Out of the trip: Strip' }).press('Enter');
    await dialog(page).getByLabel('Day', { exact: true }).fill('2026-06-21');
    await dialog(page).getByRole('button', { name: 'Compare', exact: true }).click();
    await expect.poll(() => ranked(page).count()).toBe(3);
    await dialog(page).getByRole('button', { name: 'Into the trip: Strip' }).press('Enter');
    const save = async (name: string) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        trip.getByRole('button', { name }).press('Enter'),
      ]);
      return readFile(await download.path(), 'utf8');
    };
    const calendar = await save('Save as a calendar');
    expect(calendar).toContain('DTSTART:20260620T');
    expect(calendar).toContain('DTSTART:20260621T');
    const sheet = await save('Save a sheet to print');
    expect(sheet.match(/<h2>/g)).toHaveLength(2);
    expect(sheet).toContain('Not for navigation');
    // [B1064] Closed and opened again it is as it was left.
    await dialog(page).getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Menu', exact: true }).click();
    await page.getByRole('button', { name: 'Which field', exact: true }).click();
    await dialog(page).getByText('Fields: 3 chosen').waitFor();
    await expect.poll(() => dialog(page).getByLabel('Day', { exact: true }).inputValue()).toBe('21 Jun 2026');
    await expect.poll(() => ranked(page).count()).toBe(3);
    await expect.poll(() => trip.innerText()).toContain('Strip');
    await dialog(page)
      .getByText(/^As compared before/)
      .waitFor();
    expect(complaints).toEqual([]);
  });
});

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import { openPage, urlOf } from './page';
import { rename, statusOf, surveyName } from './tabs';

/** A survey small enough for a link, the sample site is not. */
const small = {
  type: 'FeatureCollection',
  sunside: { version: 1, site: { name: 'Sarn strip', elevation: 186 } },
  features: Array.from({ length: 5 }, (_, i) => ({
    type: 'Feature',
    id: `spot${i}`,
    properties: { kind: 'standing-spot', name: `Spot ${i}`, access: { status: 'public' } },
    geometry: { type: 'Point', coordinates: [18.17 + i / 300, 50.93] },
  })),
};

async function openSmall(page: Page): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles([
    { name: 'a.geojson', mimeType: 'application/geo+json', buffer: Buffer.from(JSON.stringify(small)) },
  ]);
  await expect.poll(() => surveyName(page).inputValue()).toBe('Sarn strip');
}

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Pass on' });
const arrival = (page: Page) => page.getByRole('dialog', { name: 'A survey in a link' });

async function openDialog(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await page.getByRole('button', { name: 'Pass on', exact: true }).click();
  await dialog(page).waitFor();
}

async function linkOf(page: Page): Promise<string> {
  await dialog(page).getByRole('button', { name: 'Make a link' }).click();
  return dialog(page)
    .getByLabel(/^Link, /)
    .inputValue();
}

const complaintsOfAxe = async (page: Page): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
    };
    return (await axe.run('dialog[open]')).violations.map(({ id }) => id);
  });
};

describe('passing a survey on', () => {
  it('[B260] by link from the desk to the phone: asked first, kept then, and no request carries it', async () => {
    const desk = await openPage({ map: false });
    await openSmall(desk.page);
    await rename(desk.page, 'Strip by link');
    await openDialog(desk.page);
    const link = await linkOf(desk.page);
    expect(link.length).toBeLessThan(1200);
    await expect
      .poll(() => dialog(desk.page).getByRole('img', { name: 'The link as a QR code' }).count())
      .toBe(1);
    await expect.poll(() => complaintsOfAxe(desk.page)).toEqual([]);
    expect(desk.complaints).toEqual([]);

    const phone = await openPage({ width: 360, height: 740, map: false });
    const held = link.slice(link.indexOf('#') + 1);
    const requests: string[] = [];
    phone.page.on('request', (request) =>
      requests.push([request.url(), JSON.stringify(request.headers()), request.postData() ?? ''].join(' ')),
    );
    // As from another program: the page is loaded with the link.
    await phone.page.goto('about:blank');
    await phone.page.goto(link);
    await arrival(phone.page).waitFor();
    expect(phone.page.url()).toBe(urlOf({ map: false }));
    await expect.poll(() => arrival(phone.page).innerText()).toContain('Strip by link');
    await expect.poll(() => arrival(phone.page).innerText()).toContain('5 standing spots');
    await expect.poll(() => surveyName(phone.page).inputValue()).toBe('Tolverby');
    await expect.poll(() => complaintsOfAxe(phone.page)).toEqual([]);
    await arrival(phone.page).getByRole('button', { name: 'Open it' }).press('Enter');
    await expect.poll(() => surveyName(phone.page).inputValue()).toBe('Strip by link');
    await expect.poll(() => statusOf(phone.page)).toBe('Kept on this device');
    expect(requests.length).toBeGreaterThan(0);
    expect(requests.filter((request) => request.includes(held.slice(0, 60)))).toEqual([]);
    // Neither asked again nor in the way back.
    await phone.page.reload();
    await expect.poll(() => surveyName(phone.page).inputValue()).toBe('Strip by link');
    await expect.poll(() => arrival(phone.page).count()).toBe(0);
    expect(phone.complaints).toEqual([]);
    await phone.done();
    await desk.done();
  });

  it('[B261] a link that is left keeps nothing; a broken one says so; both while the page is open', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    await openSmall(page);
    await openDialog(page);
    const link = await linkOf(page);
    await dialog(page).getByRole('button', { name: 'Close' }).click();
    await page.evaluate((hash) => (location.hash = hash), new URL(link).hash);
    await arrival(page).getByRole('button', { name: 'Leave it' }).click();
    await arrival(page).waitFor({ state: 'detached' });
    expect(page.url()).toBe(urlOf({ map: false }));
    await expect.poll(() => surveyName(page).inputValue()).toBe('Sarn strip');
    await page.evaluate((hash) => (location.hash = hash), new URL(link).hash.slice(0, -50));
    await page.getByText('cut on its way').waitFor();
    expect(page.url()).toBe(urlOf({ map: false }));
    expect(complaints).toEqual([]);
    await done();
  });

  it('[B262] what is private is listed before it leaves, and stays at home unless it is ticked', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    await openDialog(page);
    const save = async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        dialog(page).getByRole('button', { name: 'Save a file' }).click(),
      ]);
      return readFile(await download.path(), 'utf8');
    };
    await dialog(page).getByRole('button', { name: 'Make a link' }).click();
    await dialog(page)
      .getByText(/too large for a link|too long for a QR code/)
      .waitFor();
    const contact = 'airfield office, main gate';
    // The deck's, the farm's, and the office of the field's rules.
    await dialog(page).getByText('3 in this survey').click();
    await expect.poll(() => dialog(page).getByText('Car park, top deck: contact').isVisible()).toBe(true);
    expect(await save()).not.toContain(contact);
    await dialog(page).getByRole('checkbox', { name: 'Contacts' }).check();
    const text = await save();
    expect(text).toContain(contact);
    expect(text).not.toContain('Arrivals of 25 come past low');
    expect(complaints).toEqual([]);
    await done();
  });
});

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { cityExtract } from '../bench/city-extract';
import { osmXml, overpassGeom } from '../imports/fixtures/extract';
import { flown, gpx } from '../imports/fixtures/tracks';
import { openPage, type Opened } from './page';

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const dialog = (page: Page) => page.getByRole('dialog');
const button = (page: Page, name: string | RegExp) =>
  dialog(page).getByRole('button', { name, exact: typeof name === 'string' });

/** Drops files on the page, as a person would from their desk. */
async function drop(page: Page, ...files: readonly (readonly [name: string, text: string])[]): Promise<void> {
  await page.evaluate((list) => {
    const dataTransfer = new DataTransfer();
    for (const [name, text] of list) dataTransfer.items.add(new File([text], name));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  }, files);
}
const groupLine = (page: Page, name: string) => dialog(page).locator('label.choice', { hasText: name });
const contents = (page: Page) => page.getByLabel('What the survey contains');

interface Saved {
  readonly sunside: { readonly sources?: readonly { readonly mark?: string }[] };
  readonly features: readonly { readonly properties: Readonly<Record<string, unknown>> }[];
}
async function saved(page: Page): Promise<Saved> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), 'utf8')) as Saved;
}
const kinds = ({ features }: Saved) => {
  const counts: Record<string, number> = {};
  for (const { properties } of features)
    counts[String(properties['kind'])] = (counts[String(properties['kind'])] ?? 0) + 1;
  return counts;
};

describe('bringing in', () => {
  let opened: Opened;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage({ map: false });
    ({ page } = opened);
  });
  /** The sample site afresh. */
  beforeEach(async () => {
    if (await dialog(page).count()) await button(page, 'Cancel').click();
    await page.getByRole('button', { name: 'Surveys', exact: true }).click();
    await button(page, 'Open the sample site').click();
    await dialog(page).waitFor({ state: 'detached' });
  });

  it('[B180] previews a map that is dropped, takes over what is ticked in one undo step, and keeps the credit', async () => {
    const before = kinds(await saved(page));
    await drop(page, ['field.osm', osmXml()]);
    await button(page, 'Bring 24 things in').waitFor();
    await expect
      .poll(() => groupLine(page, 'Buildings').innerText())
      .toMatch(/9 new; 2 of assumed height; .*Hangar 1/s);
    const left = () => dialog(page).getByLabel('What is left out').innerText();
    await expect.poll(left).toContain('buildings: smaller than 15 m²');
    await expect.poll(() => dialog(page).innerText()).toContain('One height could not be read ("tall")');
    await groupLine(page, 'Runways').getByRole('checkbox').uncheck();
    await page.evaluate(axeSource);
    const faults = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as {
        axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
      };
      return (await axe.run('dialog[open]')).violations.map(({ id }) => id);
    });
    expect(faults).toEqual([]);
    await button(page, 'Bring 23 things in').click();
    await page.getByText('23 things are new in this survey').waitFor();
    const after = await saved(page);
    expect(kinds(after)['obstacle']).toBe((before['obstacle'] ?? 0) + 15);
    expect(kinds(after)['runway']).toBe(before['runway']);
    expect(kinds(after)['ground-use']).toBe((before['ground-use'] ?? 0) + 6);
    expect(after.sunside.sources?.map(({ mark }) => mark)).toContain('© OpenStreetMap contributors');
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    expect(kinds(await saved(page))).toEqual(before);
  });

  it('[B181] brings nothing in twice', async () => {
    const text = JSON.stringify(overpassGeom());
    await drop(page, ['field.json', text]);
    await button(page, 'Bring 24 things in').click();
    await page.getByText('24 things are new').waitFor();
    await drop(page, ['field.osm', osmXml()]);
    await dialog(page).getByText('24 already here, unchanged').waitFor();
    await expect.poll(() => button(page, /^Bring .* in$/).count()).toBe(0);
    // The map says something else now: one is updated.
    await drop(page, ['field.json', text.replace('"height":"12 m"', '"height":"14 m"')]);
    await dialog(page).getByText('1 that the source says otherwise now, 23 already here').waitFor();
    await button(page, 'Bring one thing in').click();
    const { features } = await saved(page);
    const hangars = features.filter(({ properties }) => properties['name'] === 'Hangar 1');
    expect(hangars.map(({ properties }) => properties['height'])).toEqual([14]);
  });

  it('[B182] asks what altitudes of a recorded flight mean, and makes standing spots of waypoints', async () => {
    // Picked, this time.
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in', exact: true }).click(),
    ]);
    const high = gpx(flown.map((p) => ({ ...p, ele: p.ele + 100 })));
    await chooser.setFiles({
      name: 'flight.gpx',
      mimeType: 'application/gpx+xml',
      buffer: Buffer.from(high),
    });
    await groupLine(page, 'Flight paths').waitFor();
    await dialog(page).getByLabel('What the altitudes are counted from').selectOption('pressure');
    const qnh = dialog(page).getByLabel('Altimeter setting there and then');
    await qnh.fill('2000');
    await qnh.press('Enter');
    await expect.poll(() => dialog(page).getByRole('alert').innerText()).toContain('from 870 to 1090 hPa');
    await qnh.fill('29.53');
    await qnh.press('Enter');
    await button(page, 'Bring 3 things in').click();
    await page.getByText('3 things are new').waitFor();
    await expect.poll(() => contents(page).innerText()).toContain('Mound & gate');
    const flight = (await saved(page)).features.find(
      ({ properties }) => properties['kind'] === 'flight-path',
    );
    expect(flight?.properties['altitude']).toEqual({ meaning: 'pressure', qnh: 1000 });
    // 1000 hPa lie 110.9 m up in the standard atmosphere.
    const [first] = flight?.properties['heights'] as number[];
    expect(first).toBeCloseTo((flown[0]?.ele ?? 0) + 100 - 110.9, 0);
  });

  it('[B183] offers a new survey where a map is of another place', async () => {
    const elsewhere = osmXml().replace(/lat="50/g, 'lat="44');
    await drop(page, ['elsewhere.osm', elsewhere]);
    await dialog(page)
      .getByText(/lies 66\d km from the open survey/)
      .waitFor();
    await button(page, 'Start a new survey there').click();
    await button(page, 'Bring 24 things in').click();
    await page.getByText('24 things are new').waitFor();
    expect(kinds(await saved(page))).toMatchObject({ runway: 1, obstacle: 15, 'ground-use': 6 });
  });

  it('[B184] says what is wrong with a file, and changes nothing when it is cancelled', async () => {
    const before = await saved(page);
    await drop(page, ['broken.gpx', gpx().slice(0, 900)]);
    await dialog(page)
      .getByText(/broken\.gpx: The file is not XML\. At line \d+/)
      .waitFor();
    await button(page, 'Cancel').click();
    // A large file is given up while it is read, or just after: nothing of it comes later.
    await drop(page, ['city.osm', cityExtract(5, [18.1734, 50.9287])]);
    await button(page, 'Cancel').click();
    await dialog(page).waitFor({ state: 'detached' });
    await drop(page, ['field.osm', osmXml()]);
    await button(page, 'Bring 24 things in').waitFor();
    await page.keyboard.press('Escape');
    await dialog(page).waitFor({ state: 'detached' });
    expect(await saved(page)).toEqual(before);
    expect(opened.complaints).toEqual([]);
  });
});

it('[B185] the map says whose data are on it', async () => {
  const { page, complaints, done } = await openPage({ width: 800, height: 600 });
  await drop(page, ['field.osm', osmXml()]);
  await button(page, 'Bring 24 things in').click();
  await page.locator('.credit', { hasText: '© OpenStreetMap contributors' }).waitFor();
  expect(complaints).toEqual([]);
  await done();
});

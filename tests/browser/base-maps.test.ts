import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodePng } from '../support/png';
import { colours, TileServer, vectorArchive } from '../support/tile-server';
import { atRest, boxAtRest, hasFocus, mapReady, openPage, pixelOf, type Opened } from './page';

const server = new TileServer();
let opened: Opened;
let page: Page;
let folder: string;
const asked: string[] = [];

beforeAll(async () => {
  await server.start();
  folder = await mkdtemp(join(tmpdir(), 'base-maps-'));
  await writeFile(join(folder, 'atlas.pmtiles'), vectorArchive());
  await writeFile(join(folder, 'broken.pmtiles'), 'not an archive');
  opened = await openPage({ width: 1280, height: 640, onRequest: (url) => asked.push(url) });
  ({ page } = opened);
});
afterAll(async () => {
  await opened.done();
  await server.die();
  await rm(folder, { recursive: true, force: true });
});

const dialog = () => page.getByRole('dialog', { name: 'Base map' });
const map = () => page.locator('[data-base]');
const credit = () => page.locator('.credit').innerText();
const base = () => map().getAttribute('data-base');

async function openDialog() {
  await page.getByRole('button', { name: 'Base map', exact: true }).click();
  await dialog().waitFor();
}
async function closeDialog() {
  await page.keyboard.press('Escape');
  await dialog().waitFor({ state: 'hidden' });
}
/** Adds a map by its address, and leaves the dialog. */
async function add(kind: string, address: string, name: string, more: { readonly credit?: string } = {}) {
  await openDialog();
  await page.getByText('Add a map of your own').click();
  await dialog().getByLabel('Kind').selectOption(kind);
  await dialog().getByLabel('Name').fill(name);
  await dialog().getByLabel('Address').fill(address);
  if (more.credit)
    await dialog()
      .getByLabel(/^Credit/)
      .fill(more.credit);
  await dialog().getByRole('button', { name: 'Add', exact: true }).click();
  await dialog().getByText('It is in the list now').waitFor();
  await closeDialog();
}
async function choose(name: string) {
  await openDialog();
  await dialog().getByRole('radio', { name }).check();
  await closeDialog();
}

/** The colour at the map's left edge, below the legend's button, where the sample survey draws nothing. */
async function colourBeside(): Promise<readonly number[]> {
  const box = await boxAtRest(map());
  const at = { x: Math.round(box.x + 30), y: Math.round(box.y + box.height * 0.45) };
  const picture = await page.screenshot({ clip: { ...at, width: 2, height: 2 } });
  return decodePng(picture)[0]?.[0]?.slice(0, 3) ?? [];
}
/** The relief of the sample site may shade what lies under it; the colours differ by far more. */
const near = (a: readonly number[], b: readonly number[], by = 40) =>
  a.length === 3 && a.every((value, i) => Math.abs(value - (b[i] ?? NaN)) <= by);
const shows = (colour: readonly number[]) =>
  expect.poll(async () => near(await colourBeside(), colour), { timeout: 15_000 }).toBe(true);

/** Everything outside the page's own server that was asked since. */
function outsideOf(own: string): string[] {
  return asked.splice(0).filter((url) => /^https?:/.test(url) && !url.startsWith(own));
}

describe('the map under the survey', () => {
  it('[B100] asks nothing outside the page until another map is chosen, and says whose each one is', async () => {
    expect(outsideOf(new URL(page.url()).origin)).toEqual([]);
    await expect.poll(base).toBe('plain');
    await openDialog();
    const rows = await atRest(() => dialog().getByRole('listitem').allInnerTexts());
    expect(rows[0]).toMatch(/Plain plan[^]*Natural Earth/);
    expect(rows[1]).toMatch(/Street map[^]*OpenStreetMap contributors/);
    expect(rows[2]).toMatch(/vector[^]*OpenMapTiles/);
    await dialog().getByLabel(/Faded/).uncheck();
    await closeDialog();
  });

  it('[B101] says what to mend about a typed address, and asks nobody about it', async () => {
    await openDialog();
    await page.getByText('Add a map of your own').click();
    await dialog().getByLabel('Address').fill('https://tiles.example.org/{z}/{x}.png');
    await dialog().getByRole('button', { name: 'Add', exact: true }).click();
    await expect.poll(() => dialog().innerText()).toContain('Put {y} where the address has the row');
    await dialog().getByLabel('Address').fill('http://tiles.example.org/{z}/{x}/{y}.png');
    await expect.poll(() => dialog().innerText()).toContain('Write https:// instead of http://');
    await dialog().getByLabel('Kind').selectOption('style');
    await dialog().getByLabel('Address').fill(`${server.origin}/page.html`);
    await dialog().getByRole('button', { name: 'Add', exact: true }).click();
    await expect.poll(() => dialog().innerText()).toContain('no map style: it is not JSON');
    await closeDialog();
    await expect.poll(base).toBe('plain');
    expect(outsideOf(new URL(page.url()).origin)).toEqual([`${server.origin}/page.html`]);
  });

  it('[B102] draws picture tiles of a template under the survey, with the credit that was typed', async () => {
    await add('tiles', `${server.origin}/raster/{z}/{x}/{y}.png`, 'Pictures', {
      credit: 'Invented survey office',
    });
    await shows(colours.raster);
    await expect.poll(credit).toContain('Invented survey office');
    await expect.poll(credit).not.toContain('Tolverby');
    const outside = outsideOf(new URL(page.url()).origin);
    expect(outside.length).toBeGreaterThan(2);
    expect(outside.every((url) => url.startsWith(`${server.origin}/raster/`))).toBe(true);
  });

  it('[B103] goes on while tiles are slow: figures, labels and the survey do not wait for them', async () => {
    await choose('Plain plan');
    server.hold();
    await choose('Pictures');
    await page.getByRole('button', { name: 'Zoom in' }).click();
    await expect.poll(() => server.heldBack).toBeGreaterThan(0);
    await expect.poll(base).toBe('waiting');
    await expect.poll(credit).toContain('Tolverby');
    await expect.poll(() => page.getByText('cannot be reached').count()).toBe(0);
    server.letGo();
    await shows(colours.raster);
    await page.getByRole('button', { name: 'Show the whole survey' }).click();
  });

  it('[B104] says quietly when the server dies, goes on on the plain plan, and is silent when it is back', async () => {
    await server.die();
    await page.getByRole('button', { name: 'Zoom out' }).click();
    await page.getByRole('button', { name: 'Zoom out' }).click();
    const trouble = page.getByText(
      'The map tiles of Pictures cannot be reached; the survey goes on on the plain plan.',
    );
    await trouble.waitFor();
    await expect.poll(credit).toContain('Tolverby');
    await server.start();
    // A tile that was just being asked for may have brought the map back before.
    await page
      .getByRole('button', { name: 'Try again' })
      .click({ timeout: 2_000 })
      .catch(() => undefined);
    await trouble.waitFor({ state: 'hidden' });
    await shows(colours.raster);
  });

  it('[B105] says so when a server answers with errors, or has no tiles here', async () => {
    server.status = 500;
    await page.getByRole('button', { name: 'Zoom out' }).click();
    await page.getByText('The map tiles of Pictures cannot be reached').waitFor();
    server.status = 200;
    await add('tiles', `${server.origin}/nowhere/{z}/{x}/{y}.png`, 'Nowhere');
    await page.getByText('There are no map tiles of Nowhere here').waitFor();
    await expect.poll(credit).toContain('Tolverby');
  });

  it('[B106] draws a vector style from an address, with its own credit as text, and the survey on top', async () => {
    await page.getByRole('button', { name: 'Show the whole survey' }).click();
    await add('style', `${server.origin}/style.json`, 'Vectors');
    await shows(colours.vector);
    await expect.poll(credit).toContain('Vector & co');
    await expect
      .poll(() => page.locator('.credit a', { hasText: 'Vector & co' }).getAttribute('href'))
      .toBe('https://example.org/vectors');
    // The style has an image of the name that the survey's own mark has: it must not take its place.
    const { x, y } = await pixelOf(page, [18.1734, 50.9287]);
    const isRed = ([r, g, b]: readonly number[]) => r === 255 && g === 0 && b === 0;
    const clip = { x: x - 300, y: y - 100, width: 600, height: 200 };
    await expect
      .poll(async () =>
        decodePng(await page.screenshot({ clip }))
          .flat()
          .some(isRed),
      )
      .toBe(false);
    // Its own typeface is asked for; the survey's is not.
    const glyphs = () => server.asked.filter((path) => path.startsWith('/glyphs/'));
    await expect.poll(() => glyphs().length).toBeGreaterThan(0);
    expect(glyphs().every((path) => path.startsWith('/glyphs/Invented%20Sans/'))).toBe(true);
    await expect.poll(() => page.locator('[onclick]').count()).toBe(0);
  });

  it('[B107] draws a PMTiles archive from an address: pictures, and vectors without a style', async () => {
    await add('archive', `${server.origin}/raster.pmtiles`, 'Picture archive');
    await shows(colours.archive);
    await expect.poll(credit).toContain('Invented pictures');
    await add('archive', `pmtiles://${server.origin}/vector.pmtiles`, 'Vector archive');
    await expect.poll(base).toBe('shown');
    await expect.poll(credit).toContain('An invented atlas');
    await expect.poll(() => page.locator('img').count()).toBe(0);
  });

  it('[B108] keeps a PMTiles file on the device: it is there after a reload without a server, and can be deleted', async () => {
    await openDialog();
    await page.getByText('Add a map of your own').click();
    await dialog().getByLabel('Kind').selectOption('archive');
    const pick = async (file: string) => {
      const chooser = page.waitForEvent('filechooser');
      await dialog().getByRole('button', { name: 'Choose a file instead' }).click();
      await (await chooser).setFiles(join(folder, file));
    };
    await pick('broken.pmtiles');
    await expect.poll(() => dialog().innerText()).toContain('it is no PMTiles archive');
    await pick('atlas.pmtiles');
    await dialog().getByText('It is in the list now').waitFor();
    await expect
      .poll(() => dialog().getByRole('listitem').last().innerText())
      .toMatch(/atlas[^]*kept on this device, \d+ kB/);
    await closeDialog();
    await server.die();
    asked.splice(0);
    await page.reload();
    await mapReady(page);
    await expect.poll(base).toBe('shown');
    await expect.poll(credit).toContain('An invented atlas');
    expect(outsideOf(new URL(page.url()).origin)).toEqual([]);
    await openDialog();
    await dialog().getByRole('button', { name: 'Delete atlas' }).click();
    await dialog().getByRole('button', { name: 'Undo' }).click();
    await expect.poll(base).toBe('shown');
    await dialog().getByRole('button', { name: 'Delete atlas' }).click();
    await closeDialog();
    await expect.poll(base).toBe('plain');
    await expect
      .poll(() =>
        page.evaluate(
          () =>
            new Promise((resolve, reject) => {
              const open = indexedDB.open('sunside-files');
              open.onerror = () => reject(new Error('no database'));
              open.onsuccess = () => {
                const count = open.result.transaction('files').objectStore('files').count();
                count.onsuccess = () => {
                  open.result.close();
                  resolve(count.result);
                };
              };
            }),
        ),
      )
      .toBe(0);
  });

  it('[B109] goes to typed coordinates by the keyboard alone, and offers a survey there', async () => {
    await page.locator('body').press('/');
    const box = page.getByRole('combobox', { name: /coordinates/ });
    await hasFocus(box);
    await page.keyboard.type('95, 10');
    await expect.poll(() => page.getByRole('dialog').getByRole('status').innerText()).toMatch(/latitude/i);
    await box.fill('');
    await page.keyboard.type('51°28\'39"N 0°29\'06"W');
    const first = page.getByRole('dialog').getByRole('option').first();
    await expect.poll(() => first.innerText()).toContain('Go to 51.4775, -0.485');
    await page.keyboard.press('Enter');
    await expect.poll(async () => Number(await map().getAttribute('data-lat'))).toBeCloseTo(51.4775, 4);
    await expect.poll(async () => Number(await map().getAttribute('data-lng'))).toBeCloseTo(-0.485, 4);
    await page.getByRole('button', { name: 'Start a survey here' }).click();
    await page.getByText('A new survey. Draw its first runway').waitFor();
    await expect.poll(async () => Number(await map().getAttribute('data-lat'))).toBeCloseTo(51.4775, 4);
    await expect.poll(() => page.getByLabel('Name of the survey').inputValue()).toBe('');
  });

  it('[B110] shows the world’s land and a labelled grid from afar, from the page’s own server', async () => {
    asked.splice(0);
    for (let i = 0; i < 9; i++) await page.getByRole('button', { name: 'Zoom out' }).click();
    await expect.poll(() => asked.some((url) => url.endsWith('/land.json'))).toBe(true);
    await expect.poll(credit).toContain('Natural Earth');
    expect(outsideOf(new URL(page.url()).origin)).toEqual([]);
  });
});

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { hasFocus, openPage, type Opened } from './page';

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules that axe finds broken inside the open dialog. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(where: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations: found } = await axe.run('dialog[open]');
    return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
  });
}

const dialog = (page: Page) => page.getByRole('dialog');
const button = (page: Page, name: string | RegExp) =>
  dialog(page).getByRole('button', { name, exact: typeof name === 'string' });
async function openKit(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await page.getByRole('button', { name: 'Kit', exact: true }).click();
}
const lensNames = (page: Page) => dialog(page).locator('[data-entry] .name').allInnerTexts();

async function savedSurvey(page: Page): Promise<{ sunside: Record<string, unknown> }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), 'utf8')) as { sunside: Record<string, unknown> };
}

async function importTable(page: Page, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, 'Import a table').click(),
  ]);
  await chooser.setFiles({ name: 'lenses.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
}

const starterLenses = ['24–70 mm f/2.8', '70–200 mm f/2.8', '100–400 mm f/5.6'];

describe('kit and subjects', () => {
  let opened: Opened;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage({ map: false });
    ({ page } = opened);
  });
  /** The sample site afresh, as a survey of its own: cheaper than another page. */
  beforeEach(async () => {
    if (await dialog(page).count()) await button(page, 'Close').click();
    await page.getByRole('button', { name: 'Open the sample site' }).click();
    await page.getByRole('button', { name: 'Undo', exact: true }).waitFor();
  });
  afterAll(() => opened.done());

  it('[B80] a lens is added by keyboard alone: faults are named, nothing typed is lost, undo takes it back', async () => {
    await page.getByRole('button', { name: 'Menu', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Kit', exact: true }).focus();
    await page.keyboard.press('Enter');
    await button(page, 'Add a lens').focus();
    await page.keyboard.press('Enter');
    await hasFocus(dialog(page).getByLabel('Name'));
    for (const text of ['Far reach', '0', '0', '1.4 2']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    await dialog(page).getByText('Focal length: "0" cannot be read. Type one number or two').waitFor();
    await dialog(page).getByText('Widest aperture: "0" cannot be read.').waitFor();
    await expect
      .poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).value))
      .toBe('0');
    await expect.poll(() => dialog(page).getByLabel('Name').inputValue()).toBe('Far reach');
    await expect.poll(() => violations(page)).toEqual([]);

    await page.keyboard.press('Escape');
    await dialog(page).getByText('What you typed is not saved yet.').waitFor();
    await dialog(page).getByLabel('Focal length, mm').fill('150-600');
    await dialog(page).getByLabel('Widest aperture, f-number').fill('f/6,3');
    await page.keyboard.press('Enter');
    await expect.poll(() => lensNames(page)).toEqual([...starterLenses, 'Far reach']);
    await expect.poll(() => violations(page)).toEqual([]);

    await button(page, 'Undo add lens').click();
    await expect.poll(() => lensNames(page)).toEqual(starterLenses);
    await button(page, 'Redo add lens').click();
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog(page).count()).toBe(0);
    const { kit } = (await savedSurvey(page)).sunside as {
      kit: { lenses: { name: string }[]; bodies: unknown[] };
    };
    expect(kit.lenses.at(-1)).toEqual({
      key: 'far-reach',
      name: 'Far reach',
      shortest: 150,
      longest: 600,
      widestAperture: 6.3,
      extenders: [1.4, 2],
    });
    expect([kit.lenses.length, kit.bodies.length]).toEqual([4, 4]);
    expect(opened.complaints).toEqual([]);
  });

  it('[B81] entries are moved, duplicated and deleted; the last one stays', async () => {
    await openKit(page);
    await button(page, 'Move 100–400 mm f/5.6 up').click();
    await button(page, 'Delete 70–200 mm f/2.8').click();
    await button(page, 'Duplicate 24–70 mm f/2.8').click();
    await expect
      .poll(() => lensNames(page))
      .toEqual(['24–70 mm f/2.8', '24–70 mm f/2.8 (copy)', '100–400 mm f/5.6']);
    await button(page, 'Delete 24–70 mm f/2.8 (copy)').click();
    await button(page, 'Delete 24–70 mm f/2.8').click();
    await expect.poll(() => button(page, 'Delete 100–400 mm f/5.6').isDisabled()).toBe(true);
  });

  it('[B82] a table is shown before it comes in, is one step, and doubles nothing the second time', async () => {
    await openKit(page);
    const table =
      'Name;Brennweite;Shortest (mm);Longest (mm);Aperture\r\nFernglas;x;150;600;6,3\r\nKaputt;x;0;600;6,3\r\n70–200 mm f/2.8;x;70;200;2,8';
    await importTable(page, table);
    await dialog(page)
      .getByText('1 lens would come in; 1 lens is there already just so; 1 row is left out.')
      .waitFor();
    await dialog(page).getByText('Row 3: Shortest focal length: "0" does not fit').waitFor();
    await dialog(page).getByText('The column "Brennweite" is not known and is left out.').waitFor();
    await expect.poll(() => violations(page)).toEqual([]);
    await button(page, 'Take them over').click();
    await expect.poll(() => lensNames(page)).toEqual([...starterLenses, 'Fernglas']);
    await importTable(page, table);
    await dialog(page).getByText('2 lenses are there already just so; 1 row is left out.').waitFor();
    await expect.poll(() => button(page, 'Take them over').count()).toBe(0);
    await button(page, 'Back').click();
    await button(page, 'Undo import lenses').click();
    await expect.poll(() => lensNames(page)).toEqual(starterLenses);
    await importTable(page, '<b>no table</b>');
    await dialog(page).getByText('The table has no column for: Shortest focal length').waitFor();
  });

  it('[B83] a list is saved as a table that comes back as it was', async () => {
    await openKit(page);
    await button(page, 'Subjects').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, 'Save as a table').click(),
    ]);
    expect(download.suggestedFilename()).toBe('subjects.csv');
    await importTable(page, await readFile(await download.path(), 'utf8'));
    await dialog(page)
      .getByText(/^\d+ subjects are there already just so\.$/)
      .waitFor();
  });

  it('[B84] kits change places', async () => {
    await openKit(page);
    await button(page, 'Kits').click();
    await button(page, /^Add a kit/).click();
    await button(page, 'Lenses').click();
    await button(page, 'Delete 24–70 mm f/2.8').click();
    await button(page, 'Kits').click();
    await button(page, 'Use Unnamed kit').click();
    await dialog(page).getByText('4 bodies, 2 lenses').waitFor();
    await expect.poll(() => violations(page)).toEqual([]);
    await button(page, 'Lenses').click();
    await expect.poll(() => lensNames(page)).toEqual(starterLenses);
  });
});

describe('on a phone', () => {
  it('[B85] fits a phone of 360 px, with targets of 44 px', async () => {
    const { page, done } = await openPage({ width: 360, height: 740, touch: true, map: false });
    await page.getByRole('button', { name: 'Survey', exact: true }).tap();
    await page.getByText('Subject and kit').tap();
    await page.getByRole('button', { name: 'Edit kit and subjects' }).tap();
    for (const tab of ['Lenses', 'Bodies', 'Kits', 'Subjects']) {
      await button(page, tab).tap();
      const small = await dialog(page).evaluate((box) =>
        [...box.querySelectorAll<HTMLElement>('button, input')]
          .filter(
            (control) => control.offsetHeight < 44 || control.getBoundingClientRect().right > innerWidth,
          )
          .map((control) => control.textContent),
      );
      expect(small, tab).toEqual([]);
    }
    await button(page, /^A320/).tap();
    const wide = await dialog(page).evaluate((box) => box.scrollWidth - box.clientWidth);
    expect(wide).toBeLessThanOrEqual(0);
    await expect.poll(() => dialog(page).getByLabel('Approach speed, kt').inputValue()).toBe('136.1');
    await done();
  });
});

describe('preferences', () => {
  const openPreferences = (page: Page) =>
    page.getByRole('button', { name: 'Preferences', exact: true }).first().click();
  const spotRange = (page: Page) => page.getByLabel('What the survey contains').getByText(/^193 m |^633 ft /);

  it('[B86] units, clock and language are shown everywhere, kept on the device and not in the survey', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    await expect.poll(() => spotRange(page).innerText()).toBe('193 m from 07/25, north side');
    await openPreferences(page);
    await dialog(page).getByLabel('feet').check();
    await dialog(page).getByLabel('6:30 pm').check();
    await dialog(page).getByLabel('Language of dates').selectOption({ label: 'Deutsch' });
    await expect.poll(() => violations(page)).toEqual([]);
    await button(page, 'Close').click();
    const said = async () => {
      await expect.poll(() => spotRange(page).innerText()).toBe('633 ft from 07/25, north side');
      await expect
        .poll(() => page.getByLabel('Date and moments').innerText())
        .toMatch(/sunrise 4:3\d am.*\n?.*Juni 2026/s);
    };
    await said();
    await page.reload();
    await page.getByLabel('Name of the survey').waitFor();
    await said();
    expect(JSON.stringify((await savedSurvey(page)).sunside)).not.toMatch(/system|6:30 pm|"ft"/);
    expect(complaints).toEqual([]);
    await done();
  });

  it('[B87] hold for the visit where the browser refuses to keep them', async () => {
    const { page, done } = await openPage({ map: false });
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('refused', 'QuotaExceededError');
      };
    });
    await openPreferences(page);
    await dialog(page).getByLabel('feet').check();
    await dialog(page).getByText('This browser refuses to keep preferences').waitFor();
    await button(page, 'Close').click();
    await expect.poll(() => spotRange(page).innerText()).toMatch(/^633 ft/);
    await done();
  });
});

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import axe from 'axe-core';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keep } from './keep-surveys';
import { hasFocus, openPage, openTab, type Opened } from './page';
import { rename, statusOf, surveyName } from './tabs';

const kept = 'Kept on this device';
const dialog = (page: Page) => page.getByRole('dialog', { name: 'Surveys' });
const rows = (page: Page) => dialog(page).locator('[data-survey]');

async function openList(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'Surveys', exact: true });
  // A phone has it in the menu.
  if (!(await button.isVisible())) await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await button.click();
  await dialog(page).locator('ul, .empty, .caution').first().waitFor();
}

/** First line of every row: the name, and "open here" behind the open one. */
const titles = (page: Page): Promise<string[]> => rows(page).locator('.title').allInnerTexts();

const survey = (name: string, spots = 0) =>
  JSON.stringify({
    type: 'FeatureCollection',
    sunside: { version: 1, site: { name, icao: 'ZZ04' }, moments: { date: '2026-07-03' } },
    features: Array.from({ length: spots }, (_, i) => ({
      type: 'Feature',
      id: `spot${i}`,
      properties: { kind: 'standing-spot', name: `Spot ${i}` },
      geometry: { type: 'Point', coordinates: [8.5 + i / 100, 47.5] },
    })),
  });

async function importFiles(
  page: Page,
  files: readonly { name: string; content: string | Uint8Array }[],
): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    dialog(page).getByRole('button', { name: 'Import files' }).click(),
  ]);
  await chooser.setFiles(
    files.map(({ name, content }) => ({
      name,
      mimeType: name.endsWith('.zip') ? 'application/zip' : 'application/geo+json',
      buffer: Buffer.from(content),
    })),
  );
}

describe('the list of a device that has kept nothing', () => {
  let opened: Opened;
  beforeAll(async () => {
    opened = await openPage({ map: false });
  });
  afterAll(() => opened.done());

  it('[K10] teaches the next step while nothing is kept', async () => {
    const { page, complaints } = opened;
    await openList(page);
    await expect.poll(() => dialog(page).innerText()).toContain('Nothing is kept yet');
    await expect.poll(() => rows(page).count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('says in the list whether the browser may clear it', async () => {
    const { page } = opened;
    await expect
      .poll(() => dialog(page).innerText())
      .toMatch(/may clear these surveys when space runs short: save files too|promised not to clear/);
  });

  it('[K15] takes dropped files', async () => {
    const { page } = opened;
    const transfer = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'dropped.geojson'));
      return data;
    }, survey('Dropped here'));
    await page.dispatchEvent('dialog', 'dragover', { dataTransfer: transfer });
    await page.dispatchEvent('dialog', 'drop', { dataTransfer: transfer });
    await expect.poll(() => titles(page)).toEqual(['Dropped here']);
    await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
  });
});

describe('the surveys on this device', () => {
  it('[K11] opens, duplicates, renames in place and deletes, with undo', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    await rename(page, 'South bank');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await openList(page);
    await expect.poll(() => titles(page)).toEqual(['South bankopen here']);
    await expect
      .poll(() => rows(page).first().innerText())
      .toMatch(/5 standing spots · changed today \d\d:\d\d/);

    await dialog(page).getByRole('button', { name: 'Duplicate South bank' }).click();
    await expect.poll(() => titles(page)).toEqual(['South bank (copy)', 'South bankopen here']);

    await dialog(page).getByRole('button', { name: 'Rename South bank (copy)' }).click();
    await page.getByLabel('New name of South bank (copy)').fill('North bank');
    await page.keyboard.press('Enter');
    await expect.poll(() => titles(page)).toEqual(['North bank', 'South bankopen here']);

    await rows(page).first().click();
    await expect.poll(() => dialog(page).count()).toBe(0);
    await expect.poll(() => surveyName(page).inputValue()).toBe('North bank');

    await openList(page);
    await dialog(page).getByRole('button', { name: 'Delete North bank' }).click();
    await expect.poll(() => titles(page)).toEqual(['South bankopen here']);
    await expect.poll(() => surveyName(page).inputValue()).toBe('South bank');
    await dialog(page).getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => titles(page)).toEqual(['North bankopen here', 'South bank']);
    await expect.poll(() => surveyName(page).inputValue()).toBe('North bank');
    expect(complaints).toEqual([]);
    await done();
  });

  it('[K12] puts a deleted survey back after a reload too, and forgets it when told so', async () => {
    const { page, done } = await openPage({ map: false });
    await rename(page, 'Thrown away');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await openList(page);
    await dialog(page).getByRole('button', { name: 'Delete Thrown away' }).click();
    await dialog(page).getByText('Nothing is kept yet').waitFor();
    await page.reload();
    await surveyName(page).waitFor();
    await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
    await openList(page);
    await dialog(page).getByText('Deleted (1)').click();
    await dialog(page).getByRole('button', { name: 'Put back Thrown away' }).click();
    await expect.poll(() => titles(page)).toEqual(['Thrown away']);
    await dialog(page).getByRole('button', { name: 'Delete Thrown away' }).click();
    await dialog(page).getByText('Deleted (1)').click();
    await dialog(page).getByRole('button', { name: 'Delete for good Thrown away' }).click();
    await expect.poll(() => dialog(page).getByText('Deleted (1)').count()).toBe(0);
    await expect.poll(() => titles(page)).toEqual([]);
    await done();
  });

  it('[K13] imports several files, says which were none, and knows what it has', async () => {
    const { page, done } = await openPage({ map: false });
    await openList(page);
    const files = [
      { name: 'a.geojson', content: survey('Airfield A', 2) },
      { name: 'broken.geojson', content: '{"type": "Feature' },
      { name: 'b.json', content: survey('Airfield B', 1) },
    ];
    await importFiles(page, files);
    await dialog(page).getByText('2 surveys are in the list now.').waitFor();
    await expect
      .poll(() => dialog(page).innerText())
      .toMatch(/Not imported: broken\.geojson: The file is not JSON: .*line 1/);
    await expect.poll(() => titles(page)).toEqual(['Airfield B', 'Airfield A']);
    await expect
      .poll(() => rows(page).last().innerText())
      .toContain('ZZ04 · planned for 3 Jul 2026 · 2 standing spots');
    await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
    await importFiles(page, files);
    await dialog(page).getByText('2 were there already.').waitFor();
    await expect.poll(() => titles(page)).toHaveLength(2);
    await done();
  });

  it('[K14] saves all as one archive, which another device imports', async () => {
    const first = await openPage({ map: false });
    await openList(first.page);
    await importFiles(first.page, [
      { name: 'a.geojson', content: survey('Same name', 1) },
      { name: 'b.geojson', content: survey('Same name', 2) },
      { name: 'c.geojson', content: survey('Großer Zaun', 3) },
    ]);
    await expect.poll(() => titles(first.page)).toHaveLength(3);
    const [download] = await Promise.all([
      first.page.waitForEvent('download'),
      dialog(first.page).getByRole('button', { name: 'Save all as one archive' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^sunside-surveys-\d{4}-\d\d-\d\d\.zip$/);
    const archive = new Uint8Array(await readFile(await download.path()));
    await first.done();
    const inside = unzipSync(archive);
    expect(Object.keys(inside).sort()).toEqual([
      'großer-zaun.geojson',
      'same-name-2.geojson',
      'same-name.geojson',
    ]);
    expect(new TextDecoder().decode(inside['großer-zaun.geojson'])).toBe(survey('Großer Zaun', 3));

    const second = await openPage({ map: false });
    await openList(second.page);
    await importFiles(second.page, [{ name: 'all.zip', content: archive }]);
    await dialog(second.page).getByText('3 surveys are in the list now.').waitFor();
    expect((await titles(second.page)).sort()).toEqual(['Großer Zaun', 'Same name', 'Same name']);
    await second.done();
  });

  it('[K16] works by keyboard alone', async () => {
    const { page, done } = await openPage({ map: false });
    await rename(page, 'First');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await page.getByRole('button', { name: 'Surveys', exact: true }).focus();
    await page.keyboard.press('Enter');
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    await expect.poll(focused).toContain('First');
    await dialog(page).getByRole('button', { name: 'Duplicate First' }).press('Enter');
    await expect.poll(() => titles(page)).toHaveLength(2);
    await rows(page).first().focus();
    await page.keyboard.press('F2');
    await hasFocus(page.getByLabel('New name of First (copy)'));
    await page.keyboard.type('Second');
    await page.keyboard.press('Enter');
    await expect.poll(() => titles(page)).toEqual(['Second', 'Firstopen here']);
    await expect.poll(focused).toContain('Second');
    await page.keyboard.press('ArrowDown');
    await expect.poll(focused).toContain('First');
    await page.keyboard.press('F2');
    await hasFocus(page.getByLabel('New name of First'));
    await page.keyboard.type('never');
    await page.keyboard.press('Escape');
    await expect.poll(() => titles(page)).toEqual(['Second', 'Firstopen here']);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Delete');
    await expect.poll(focused).toBe('Undo');
    await page.keyboard.press('Enter');
    await expect.poll(() => titles(page)).toHaveLength(2);
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog(page).count()).toBe(0);
    await expect.poll(focused).toBe('Surveys');
    await done();
  });

  it('[K19] shows hundreds without a long step: some rows at a time, and the keyboard reaches the last', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    const many = Array.from({ length: 200 }, (_, i) => ({
      id: `s${i}`,
      name: `Field ${i}`,
      text: survey(''),
    }));
    await keep(page, many);
    const grown = await page.evaluateHandle(() => {
      const steps = [0];
      const count = () => steps.push(document.querySelectorAll('dialog [data-survey]').length);
      new MutationObserver(count).observe(document.body, { subtree: true, childList: true });
      return steps;
    });
    await openList(page);
    await expect.poll(() => rows(page).count()).toBe(many.length);
    const steps = await grown.jsonValue();
    expect(Math.max(...steps.slice(1).map((rows, i) => rows - (steps[i] ?? 0)))).toBeLessThanOrEqual(30);
    // From the first upwards it goes round.
    await rows(page).first().press('ArrowUp');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toContain('Field 199');
    expect(complaints).toEqual([]);
    await done();
  });

  it.each([
    [1280, 800],
    [360, 740],
  ])('[K17] is accessible, and nothing is cut off, at %i x %i', async (width, height) => {
    const { page, done } = await openPage({ width, height, map: false });
    await openList(page);
    const long = `${'A very long name of a field '.repeat(4)}Donaudampfschifffahrtsgesellschaftsaerodrome`;
    await importFiles(page, [
      { name: 'a.geojson', content: survey(long, 2) },
      { name: 'b.geojson', content: survey('Short', 2) },
    ]);
    await expect.poll(() => titles(page)).toHaveLength(2);
    await dialog(page).getByRole('button', { name: 'Delete Short' }).click();
    await dialog(page).getByText('Deleted (1)').click();
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () =>
      (await window.axe.run('dialog')).violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`),
    );
    expect(violations).toEqual([]);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll('dialog, dialog .body, dialog li')].filter(
        (element) => element.scrollWidth > element.clientWidth,
      ),
    );
    expect(cut).toEqual([]);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('dialog button:not(.link), dialog summary')]
        .filter((target) => target.offsetHeight < 44)
        .map((target) => target.textContent),
    );
    expect(small).toEqual([]);
    await done();
  });
});

describe('two tabs on one survey', () => {
  it('[K2] the other tab follows at once when it has nothing unsaved', async () => {
    const { page, context, complaints, done } = await openPage({ map: false });
    await rename(page, 'Shared');
    await expect.poll(() => statusOf(page)).toBe(kept);
    const other = await openTab(context);
    await expect.poll(() => surveyName(other).inputValue()).toBe('Shared');
    await rename(page, 'Shared and changed');
    await expect.poll(() => surveyName(other).inputValue()).toBe('Shared and changed');
    await expect.poll(() => statusOf(other)).toBe('Changed in another tab, and shown as it is there');
    // The follower knows the newest revision: its own edit is no conflict.
    await rename(other, 'Changed back');
    await expect.poll(() => surveyName(page).inputValue()).toBe('Changed back');
    await expect.poll(() => page.getByRole('alert').count()).toBe(0);
    expect(complaints).toEqual([]);
    await done();
  });

  /** Both tabs change the survey within the 250 ms before the first of them writes. */
  async function conflicting() {
    const { page, context, done } = await openPage({ map: false });
    await rename(page, 'Start');
    await expect.poll(() => statusOf(page)).toBe(kept);
    const other = await openTab(context);
    await expect.poll(() => surveyName(other).inputValue()).toBe('Start');
    // A slow tab: its writes come late, its edits do not.
    await other.evaluate(() => {
      const real = window.setTimeout.bind(window);
      window.setTimeout = ((run: () => void, ms?: number) =>
        real(run, ms === 250 ? 600_000 : ms)) as typeof window.setTimeout;
    });
    await rename(other, 'Theirs is late');
    await expect.poll(() => statusOf(other)).toBe('Saving …');
    await rename(page, 'Mine was first');
    await other.getByRole('alert').waitFor();
    return { page, other, done };
  }

  it('[K2] unsaved changes in both: keep mine as a copy', async () => {
    const { page, other, done } = await conflicting();
    await expect.poll(() => surveyName(other).inputValue()).toBe('Theirs is late');
    await other.getByRole('button', { name: 'Keep mine as a copy' }).click();
    await expect.poll(() => statusOf(other)).toBe(kept);
    await expect.poll(() => surveyName(other).inputValue()).toBe('Theirs is late (copy)');
    await expect.poll(() => surveyName(page).inputValue()).toBe('Mine was first');
    await openList(page);
    await expect.poll(() => titles(page)).toEqual(['Theirs is late (copy)', 'Mine was firstopen here']);
    await done();
  });

  it('[K2] unsaved changes in both: take theirs', async () => {
    const { page, other, done } = await conflicting();
    await other.getByRole('button', { name: 'Take theirs' }).click();
    await expect.poll(() => surveyName(other).inputValue()).toBe('Mine was first');
    await expect.poll(() => other.getByRole('alert').count()).toBe(0);
    await openList(page);
    await expect.poll(() => titles(page)).toEqual(['Mine was firstopen here']);
    await done();
  });

  it('[K2] learns of it when it writes, where tabs cannot tell each other', async () => {
    const { page, context, done } = await openPage({ map: false });
    await rename(page, 'Start');
    await expect.poll(() => statusOf(page)).toBe(kept);
    const other = await openTab(context, () => Reflect.deleteProperty(window, 'BroadcastChannel'));
    await rename(page, 'Mine was first');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await expect.poll(() => surveyName(other).inputValue()).toBe('Start');
    await rename(other, 'Second');
    await other.getByRole('alert').waitFor();
    await rename(page, 'Mine goes on');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await other.getByRole('button', { name: 'Take theirs' }).click();
    await expect.poll(() => surveyName(other).inputValue()).toBe('Mine goes on');
    await done();
  });

  it('says when the survey was deleted in another tab, and keeps it again when it is changed', async () => {
    const { page, context, done } = await openPage({ map: false });
    await rename(page, 'Fought over');
    await expect.poll(() => statusOf(page)).toBe(kept);
    const other = await openTab(context);
    await openList(other);
    await dialog(other).getByRole('button', { name: 'Delete Fought over' }).click();
    await page.getByText('This survey was deleted in another tab.').waitFor();
    await rename(page, 'Not given up');
    await expect.poll(() => titles(other)).toEqual(['Not given up']);
    await done();
  });
});

describe('a page that goes right after a change', () => {
  it('[K5] has kept it: reloaded', async () => {
    const { page, done } = await openPage({ map: false });
    await rename(page, 'Typed and reloaded');
    await page.reload();
    await surveyName(page).waitFor();
    await expect.poll(() => surveyName(page).inputValue()).toBe('Typed and reloaded');
    const left = () =>
      page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('last-words')));
    await expect.poll(left).toEqual([]);
    await done();
  });

  it('[K5] has kept it: closed', async () => {
    const { page, context, done } = await openPage({ map: false });
    await rename(page, 'Typed and closed');
    const closed = page.waitForEvent('close');
    await page.close({ runBeforeUnload: true });
    await closed;
    const again = await openTab(context);
    await expect.poll(() => surveyName(again).inputValue()).toBe('Typed and closed');
    await done();
  });
});

describe('a browser that keeps nothing', () => {
  it('[K4] says at once that storage is full, offers a file, and recovers', async () => {
    const { page, context, done } = await openPage({ map: false });
    const devtools = await context.newCDPSession(page);
    const { origin } = new URL(page.url());
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await rename(page, 'No room for this');
    const alert = page.getByRole('alert');
    await alert.waitFor();
    await expect
      .poll(() => alert.innerText())
      .toContain('Not kept on this device: there is no room left for it');
    await expect.poll(() => statusOf(page)).toBe('Not kept on this device');

    // Another survey in its place would lose it: it stays until the user has decided.
    await openList(page);
    await dialog(page).getByRole('button', { name: 'Open the sample site' }).click();
    await dialog(page).getByText('Another one in its place would lose it.').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => surveyName(page).inputValue()).toBe('No room for this');

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      alert.getByRole('button', { name: 'Save to a file' }).click(),
    ]);
    expect(await readFile(await download.path(), 'utf8')).toContain('No room for this');
    await expect.poll(() => alert.count()).toBe(0);

    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    await rename(page, 'Room again');
    await expect.poll(() => statusOf(page)).toBe(kept);
    await done();
  });

  it('[K4] works without any storage, and says so', async () => {
    const { context, done } = await openPage({ map: false });
    const page = await openTab(context, () => {
      Object.defineProperty(window, 'indexedDB', {
        value: {
          open: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        },
      });
    });
    await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
    await rename(page, 'Only here');
    await page.getByRole('alert').waitFor();
    await openList(page);
    await expect
      .poll(() => dialog(page).innerText())
      .toContain('This browser keeps no surveys: the browser allows this page no storage.');
    await done();
  });
});

declare global {
  interface Window {
    axe: typeof axe;
  }
}

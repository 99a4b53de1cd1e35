import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chooseWindows } from '../../src/survey/edits/set-plan';
import { setAccess } from '../../src/survey/edits/set-properties';
import { setRules } from '../../src/survey/edits/set-rules';
import { saveSurvey } from '../../src/survey/save';
import { opened as surveyOf } from '../support/contents';
import { atRest, openPage, type Opened } from './page';

let opened: Opened;
let page: Page;
beforeAll(async () => {
  opened = await openPage({ map: false });
  page = opened.page;
});
const dialog = () => page.getByRole('dialog', { name: 'Field sheet' });
async function openSheet(): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await page.getByRole('button', { name: 'Field sheet', exact: true }).click();
  await dialog().getByRole('heading', { name: 'Where to stand when' }).waitFor();
}

/** One of poppler's programs on a PDF; null where it is not installed. */
function poppler(program: string, file: string, ...after: string[]): string | null {
  try {
    return execFileSync(program, [file, ...after], { encoding: 'utf8' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

/** The sample site with eight windows at four spots, and notes as somebody writes them who leaves nothing out. */
function longDay(): string {
  const spots = ['s5x9ht', 's2w6bn', 's7d1kc', 's4p8ym'];
  const long = (last: string) =>
    `${'Ring at the second gate, wait for the warden, and say which field you mean. '.repeat(14)}${last}`;
  const hour = (h: number) => `2026-06-21T${String(h).padStart(2, '0')}:00:00Z`;
  const windows = Array.from({ length: 8 }, (_, i) => ({
    spot: spots[i % spots.length] ?? '',
    path: `r8k2v4/25/${i % 2 === 0 ? 'arrival' : 'departure'}`,
    from: hour(4 + 2 * i),
    to: hour(5 + 2 * i),
  }));
  const sample = surveyOf(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
  const noted = spots.reduce(
    (survey, id) =>
      setAccess(survey, id, {
        ...{ status: 'public', hours: undefined },
        ...{ contact: long('contact-last'), parking: long('parking-last') },
      }),
    setRules(sample, { notes: long('office-last') }),
  );
  return saveSurvey(chooseWindows(noted, windows));
}

describe('the field sheet', () => {
  it('[B310] shows the plan of the day in the words of the plan, and is fit for all readers', async () => {
    await openSheet();
    const text = () => dialog().innerText();
    await expect.poll(text).toMatch(/16:40–21:05 Orchard Path, east end/);
    await expect
      .poll(text)
      .toMatch(/If the wind turns to about 073° \(East wind: 07 in use\): go to Beacon Path seat/);
    await expect.poll(text).toContain('sunset 21:05');
    await expect.poll(text).toContain('119.355');
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
      };
      return (await axe.run('dialog[open]')).violations.map(({ id }) => id);
    });
    expect(violations).toEqual([]);
  });

  it('[B311] prints on one or two pages of A4, type embedded, nothing cut off, nothing of the program beside it', async (test) => {
    const pdf = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'sheet.pdf');
    writeFileSync(pdf, await page.pdf({ preferCSSPageSize: true }));
    // Nothing may be wider than the page: what is, the browser would shrink or cut off.
    await page.emulateMedia({ media: 'print' });
    const [wide, seen] = await page.evaluate(() => {
      const copy = document.querySelector('.print-copy');
      if (!copy) throw new Error('expected a copy for the printer');
      const over = [...copy.querySelectorAll('*')].filter(
        (element) => element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0,
      );
      const shown = [...document.body.children].filter(
        (element) => getComputedStyle(element).display !== 'none',
      );
      return [over.map(({ tagName }) => tagName), shown.map(({ className }) => className)];
    });
    await page.emulateMedia({ media: null });
    expect(wide).toEqual([]);
    expect(seen).toEqual(['print-copy']);
    const info = poppler('pdfinfo', pdf);
    if (info === null) return test.skip('poppler-utils (pdfinfo, pdftotext, pdffonts) are not installed');
    expect(Number(/Pages:\s+(\d+)/.exec(info)?.[1])).toBeLessThanOrEqual(2);
    expect(info).toMatch(/Page size:.*A4/);
    const text = (poppler('pdftotext', pdf, '-') ?? '').replace(/\s+/g, ' ');
    for (const words of ['Tolverby', 'Orchard Path, east end', 'Take along', '119.355', 'Not for navigation'])
      expect(text).toContain(words);
    expect(text).not.toContain('Save as a page');
    const fonts = (poppler('pdffonts', pdf) ?? '').trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/\byes\s+(yes|no)\s+(yes|no)\s+\d+\s+\d+$/);
    expect(fonts.join()).toMatch(/SourceSans/);
  });

  it('[B312] is saved as a page that fetches and runs nothing, and leaves the printer nothing when it is closed', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      dialog().getByRole('button', { name: 'Save as a page' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('tolverby-2026-06-21.html');
    const saved = readFileSync(await download.path(), 'utf8');
    expect(saved).toContain('16:40–21:05');
    expect(saved).toContain('@page');
    expect(saved).not.toMatch(/<script|<link|src=|href=/);
    await page.setViewportSize({ width: 360, height: 740 });
    await expect
      .poll(() => dialog().evaluate((element) => element.scrollWidth - element.clientWidth))
      .toBe(0);
    await dialog().getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => page.locator('.print-copy').count()).toBe(0);
    expect(opened.complaints).toEqual([]);
  });

  it('[B331] a day of eight windows with long notes takes more pages: nothing is cut off, no heading stands alone', async (test) => {
    await page.setViewportSize({ width: 1280, height: 800 });
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      ...{ name: 'long-day.geojson', mimeType: 'application/geo+json' },
      buffer: Buffer.from(longDay()),
    });
    await openSheet();
    await expect.poll(() => dialog().innerText()).toContain('office-last');
    const heads = await atRest(() => dialog().locator('h2, h3').allInnerTexts());
    const stays = await atRest(() => dialog().locator('.stay').count());
    const windows = () => dialog().locator('.stay tbody tr').count();
    await expect.poll(windows).toBe(8);
    const pdf = join(mkdtempSync(join(tmpdir(), 'long-day-')), 'sheet.pdf');
    writeFileSync(pdf, await page.pdf({ preferCSSPageSize: true }));
    await dialog().getByRole('button', { name: 'Close' }).click();
    const text = poppler('pdftotext', pdf, '-layout', '-');
    if (text === null) return test.skip('poppler-utils (pdftotext) are not installed');
    const pages = text.split('\f').slice(0, -1);
    expect(pages.length).toBeGreaterThan(2);
    for (const [last, times] of [
      ['contact-last', stays],
      ['parking-last', stays],
      ['office-last', 1],
    ] as const)
      expect(text.split(last).length - 1, last).toBeGreaterThanOrEqual(times);
    const squeezed = (words: string) => words.replace(/\s+/g, ' ').trim();
    for (const [i, printed] of pages.slice(0, -1).entries()) {
      const last = squeezed(printed.trim().split('\n').at(-1) ?? '');
      expect(heads.map(squeezed), `the last line of page ${i + 1}`).not.toContain(last);
    }
  });
});

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { closeBrowser, openPage, type Opened } from './page';

let opened: Opened;
let page: Page;
beforeAll(async () => {
  opened = await openPage({ map: false });
  page = opened.page;
});
afterAll(closeBrowser);

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

describe('the field sheet', () => {
  it('[B310] shows the plan of the day in the words of the plan, and is fit for all readers', async () => {
    await openSheet();
    const text = await dialog().innerText();
    expect(text).toMatch(/16:40–21:05 Orchard Path, east end/);
    expect(text).toMatch(/If the wind turns to about 073° \(East wind: 07 in use\): go to Beacon Path seat/);
    expect(text).toContain('sunset 21:05');
    expect(text).toContain('119.355');
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
    const wide = await dialog().evaluate((element) => element.scrollWidth - element.clientWidth);
    expect(wide).toBe(0);
    await dialog().getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => page.locator('.print-copy').count()).toBe(0);
    expect(opened.complaints).toEqual([]);
  });
});

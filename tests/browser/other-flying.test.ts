import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { thorough } from '../support/thorough';
import { otherFlyingSurvey } from './other-flying-survey';
import { openPage, pixelOf, type Opened } from './page';

describe('what else is flown, in its panels', () => {
  let opened: Opened;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage({ map: false });
    page = opened.page;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    const buffer = Buffer.from(otherFlyingSurvey());
    await chooser.setFiles({ name: 'other-flying.geojson', mimeType: 'application/geo+json', buffer });
    await listed('South winch').waitFor();
  });

  const listed = (name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) }).first();
  const type = async (label: string | RegExp, text: string) => {
    await page.getByLabel(label).fill(text);
    await page.keyboard.press('Tab');
  };
  const text = () => page.locator('body').innerText();

  it('[B500] a display line says what it is and what to do first; its passes become paths of the spots', async () => {
    await listed('Open day display').click();
    await expect.poll(text).toContain('First draw it, then the crowd line');
    await page.getByLabel('Level, along the line').check();
    await page.getByLabel('Round the crowd, topside, banked 60°').check();
    await listed('Car park, top deck').click();
    await expect.poll(text).toContain('Open day display topside pass');
  });

  it('[B501] a programme is pasted: from which side and until when, its types, late, and what is not known', async () => {
    await listed('Open day display').click();
    await type('Programme', 'Saturday\n15:20 Solo jet (F-16)');
    await expect.poll(text).toContain('This one has not: Saturday');
    await type(
      'Programme',
      '13:40-13:55 Pair (Zorblatt 3)\n13:50 Parachutes\ntbc Fire engine\n15:20 Solo jet (F-16)\n17:50 Rescue',
    );
    await expect.poll(text).toMatch(/15:20 Solo jet[\s\S]*lit from [a-z ]+ until \d\d:\d\d[\s\S]*best from /);
    const told = await text();
    expect(told).toContain('at the same time as Parachutes');
    expect(told).toContain('"Zorblatt 3" is no type that is known here');
    expect(told).toContain('no time: after Parachutes, before Solo jet');
    await type(/^Late on/, '20');
    await expect.poll(text).toContain('15:40 (printed 15:20) Solo jet');
  });

  it('[B502] the plan has windows for it while an act is on', async () => {
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await expect
      .poll(text)
      .toMatch(
        /act by act\s+14:00 \(printed 13:40\) Pair, [\s\S]*framed for A320: type not known[\s\S]*Solo jet: no spot is worth waiting/,
      );
    await page.getByRole('button', { name: 'Moments', exact: true }).click();
  });

  it('[B503] a pair is framed as a group once it is said how far apart', async () => {
    await listed('Open day display').click();
    await type('Flying together', '2');
    await page.getByRole('button', { name: /^Take two spans/ }).click();
    await expect.poll(() => page.getByLabel(/^Apart, centre to centre/).inputValue()).toMatch(/^\d+/);
    await type('Flying together', '2.5');
    await expect.poll(text).toContain('Type how many fly together, 1 to 12.');
    await type('Flying together', '2');
  });

  it('[B504] a break says what it is; without it the runway is as before', async () => {
    await listed('07/25').click();
    await page.getByText('Also flown here').click();
    // The end in use: what is flown at the other one waits for the wind.
    await page.getByLabel('End', { exact: true }).selectOption({ label: '25' });
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await expect.poll(text).toContain('over the threshold it breaks');
    await listed('Car park, top deck').click();
    await expect.poll(text).toContain('25 initial and break');
    await page.keyboard.press('Control+z');
    await expect.poll(text).not.toContain('25 initial and break');
  });

  it('[B505] a glider comes close, and is launched at the winch; a helicopter at its pad', async () => {
    await listed('Club helipad').click();
    await expect.poll(text).toContain('Choose a helicopter as the aircraft');
    await page.locator('summary', { hasText: 'Subject and kit' }).click();
    const options = page.locator('option');
    /** Chooses the first aircraft that is called so. */
    const option = async (words: RegExp) => {
      const label = (await options.allInnerTexts()).find((name) => words.test(name)) ?? '';
      await page
        .locator('select', { has: page.locator('option', { hasText: label }) })
        .first()
        .selectOption({ label });
    };
    await option(/helicopter/i);
    await listed('Car park, top deck').click();
    await expect.poll(text).toContain('Club helipad approach');
    await option(/glider/i);
    await expect.poll(text).toContain('South winch launch');
    await expect.poll(text).not.toContain('Club helipad approach');
  });

  it('[B506] a published path is pasted in decimal degrees or in degrees and minutes; what is wrong is named', async () => {
    await listed('Curved approach').click();
    const waypoints = page.getByLabel(/^Waypoints/);
    await type(/^Waypoints/, "50°54.0'N 018°03.0'E 2500\n50.93 18.10 1800\nnowhere 1200");
    await expect.poll(text).toContain('Line 3: it needs a latitude');
    await type(/^Waypoints/, "50°54.0'N 018°03.0'E 2500\n50.93 18.10 1800\n50.9272 18.1600 900");
    await expect
      .poll(() => waypoints.inputValue())
      .toBe('50.9, 18.05, 2500 ft\n50.93, 18.1, 1800 ft\n50.9272, 18.16, 900 ft');
    await type('Bank of its turns, degrees', '25');
  });

  it('[B507] twilights and the moon stand in the day and in the year, and nothing was complained of', async () => {
    await page.getByRole('button', { name: 'Light today', exact: true }).click();
    await expect.poll(text).toMatch(/Dusk: civil to \d\d:\d\d, nautical to \d\d:\d\d/);
    await expect
      .poll(text)
      .toMatch(/Moon: (waxing|waning|first|last|new|full)[a-z ]*, \d+ % lit; at \d\d:\d\d /);
    await page.getByRole('button', { name: 'Year', exact: true }).click();
    await expect.poll(text).toMatch(/moon/i);
    expect(opened.complaints).toEqual([]);
  });
});

/** The map is drawn in software: half a minute. */
describe.skipIf(!thorough)('drawn on the map', () => {
  let opened: Opened;
  let page: Page;
  beforeAll(async () => {
    opened = await openPage();
    page = opened.page;
  });

  it('[B508] a display line by its two ends, then the crowd line, which its distance is counted from', async () => {
    const { x, y } = await pixelOf(page, [18.1734, 50.9287]);
    await page.locator('body').press('d');
    await page.mouse.click(x - 200, y + 40);
    await page.mouse.click(x + 150, y + 60);
    await page.getByText('First draw it, then the crowd line').waitFor();
    await page.locator('body').press('Escape');
    await page.locator('body').press('c');
    await page.mouse.click(x - 120, y + 120);
    await page.mouse.click(x + 80, y + 130);
    await page.keyboard.press('Enter');
    await page.getByText('The public stands behind this line').waitFor();
    expect(opened.complaints).toEqual([]);
  });
});

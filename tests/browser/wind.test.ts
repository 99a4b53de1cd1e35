import { beforeAll, describe, expect, test } from 'vitest';
import { dateAt, dayStart } from '../../src/time/local-time';
import { openPage, type Opened } from './page';

/** One page for all: each test leaves a wind that the next one replaces. */
let opened: Opened;
beforeAll(async () => void (opened = await openPage({ map: false })));
const section = () => opened.page.locator('.sheet.left');
const field = () => opened.page.getByLabel('Wind, METAR or TAF');

async function enter(text: string): Promise<void> {
  if (!(await field().isVisible())) await section().getByText('Enter a wind or forecast').click();
  await field().fill(text);
  await opened.page.getByRole('button', { name: 'Use this wind' }).click();
}
const expected = () => section().getByText('Expected:');

describe('wind and flow on the sample site', () => {
  test('[B200] a typed wind: components, expected ends with the reason, how near to turning; undone in one step', async () => {
    const { page } = opened;
    await enter('070/15');
    await expected().waitFor();
    await expect
      .poll(() => expected().innerText())
      .toMatch(/^Expected: 07\. "East wind" is the first whose limits hold/);
    const row = section().getByRole('row', { name: /^07/ });
    await expect.poll(() => row.innerText()).toMatch(/arrivals, departures\s+15 kt head\s+1 kt left/);
    await expect
      .poll(() =>
        section()
          .getByText(/^25 when it veers by/)
          .count(),
      )
      .toBe(1);
    // It acts in one step: the ends follow, and the way back stands beside the word of it.
    await section().getByText('07 for arrivals and departures, following the wind').waitFor();
    await page.getByText('The ends in use follow this wind: 07.').waitFor();
    await page.locator('.news').getByRole('button', { name: 'Undo' }).click();
    await expected().waitFor({ state: 'detached' });
    await expect.poll(() => section().getByText('following the wind').count()).toBe(0);
  });

  test('[B201] what cannot be read stays in the field with the reason', async () => {
    const { page } = opened;
    await enter('P99KT');
    await page.getByRole('alert').waitFor();
    await expect.poll(() => page.getByRole('alert').innerText()).toMatch(/stronger than the report can tell/);
    await expect.poll(() => field().inputValue()).toBe('P99KT');
  });

  test('[B202] a TAF: hour by hour, an hour sets the moment, the ends follow', async () => {
    const { page } = opened;
    // From the airfield's own midnight, so that it is issued already, whatever day it is elsewhere; the wind turns three hours later.
    const from = dayStart(dateAt(Date.now(), 'Europe/Warsaw'), 'Europe/Warsaw');
    const [start, turn, end] = [0, 3, 6].map((hours) =>
      new Date(from + hours * 3_600_000).toISOString().slice(8, 13).replace('T', ''),
    );
    await enter(`TAF EPTO ${start}00Z ${start}/${end} 24015KT CAVOK FM${turn}00 07012KT`);
    const buttons = section().getByRole('list', { name: 'Hours of the forecast' }).getByRole('button');
    // The survey looks at a day in June: the hours are shown once the day of the forecast is.
    await section().getByText('The forecast is for another day than the one looked at.').waitFor();
    await expect.poll(() => buttons.count()).toBe(0);
    await page.getByRole('button', { name: 'Today', exact: true }).first().click();
    await buttons.nth(3).waitFor();
    await expect.poll(() => page.getByLabel('Ends in use follow the wind').isChecked()).toBe(true);
    await buttons.nth(4).click();
    await section().getByText('07 for arrivals and departures, following the wind').waitFor();
    await buttons.nth(1).click();
    await section().getByText('25 for arrivals and departures, following the wind').waitFor();
    await expect.poll(() => buttons.nth(1).getAttribute('aria-pressed')).toBe('true');
  });

  test('[B203] the flow editor: a limit changes what is expected, and that is undone', async () => {
    const { page } = opened;
    await page.getByLabel('Ends in use follow the wind').uncheck();
    await enter('070/15');
    await section()
      .getByText(/Expected: 07/)
      .waitFor();
    await page.getByRole('button', { name: 'Flow configurations' }).click();
    const first = page.getByRole('group', { name: /^1\. West wind/ });
    await first.getByLabel('Most tailwind').fill('20');
    await first.getByLabel('Most crosswind').click();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await section()
      .getByText(/Expected: 25/)
      .waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await section()
      .getByText(/Expected: 07/)
      .waitFor();
  });

  test('[B204] a table of past winds: columns, unreadable rows, shares, expected light; undone in one step', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Wind record' }).click();
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a table' }).click();
    const rows = ['valid,drct,spd'];
    // Three of four winds from the west, one from the east, and one row that is none.
    for (let i = 0; i < 2000; i++)
      rows.push(
        `${new Date(Date.UTC(2025, 0, 1, i * 4)).toISOString()},${Math.floor(i / 6) % 4 === 0 ? 70 : 250},12`,
      );
    await (
      await choosing
    ).setFiles({
      name: 'winds.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from([...rows, 'soon,250,12'].join('\n')),
    });
    const view = page.getByRole('region', { name: 'Wind record' });
    // The table names no unit: it is asked for.
    await expect.poll(() => view.getByRole('button', { name: 'Read the table' }).isDisabled()).toBe(true);
    await view.getByLabel('Speeds are in').selectOption('kt');
    await view.getByRole('button', { name: 'Read the table' }).click();
    await view.getByText('2,000 observations').waitFor();
    await expect.poll(() => view.getByText(/1 rows left out, 0 repeated/).count()).toBe(1);
    await expect.poll(() => view.getByRole('button', { name: '25 arrivals' }).innerText()).toContain('75 %');
    await view.getByRole('button', { name: '07 arrivals' }).click();
    await expect.poll(() => view.getByRole('img').getAttribute('aria-label')).toMatch(/Jan: 26 % to 26 %/);
    await view
      .getByRole('row', { name: /Orchard Path/ })
      .getByRole('cell')
      .nth(12)
      .waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await view.getByText('Drop a table of past winds here').waitFor();
    expect(opened.complaints).toEqual([]);
  });
});

describe('movements on the sample site', () => {
  test('[B205] typed in a line, with its end, spot, lens and light; starred; undone', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Movements', exact: true }).click();
    const view = page.getByRole('region', { name: 'Movements' });
    const line = view.getByLabel('Movement: time, a or d');
    await line.fill('1125 a A320 ZZ123 Oskin r25');
    await line.press('Enter');
    const row = view.getByRole('row', { name: /arrival A320 ZZ123 Oskin 25 as listed/ });
    await row.waitFor();
    await expect.poll(() => row.innerText()).toMatch(/(front|side)-lit/);
    await expect.poll(() => line.inputValue()).toBe('');
    await row.getByRole('button', { name: /^Wanted/ }).click();
    await expect
      .poll(() => row.getByRole('button', { name: /^Wanted/ }).getAttribute('aria-pressed'))
      .toBe('true');
    await line.fill('nonsense');
    await line.press('Enter');
    await expect.poll(() => view.getByRole('alert').innerText()).toMatch(/no time of day/);
  });

  test('[B206] a pasted list: columns, unknown types, midnight and doubles are said; saved as a table', async () => {
    const { page } = opened;
    const view = page.getByRole('region', { name: 'Movements' });
    await view.getByRole('button', { name: 'Paste a list' }).click();
    await view
      .getByLabel('Paste a list')
      .fill(
        'Time\tA/D\tType\tFlight\n11:25\tarr\tA320\tZZ123\n13:10\tdep\tB77Z\tZZ1\nsoon\tarr\tA320\t\n00:10\tarr\tA320\tZZ9',
      );
    await view.getByText('The list passes midnight at row 5').waitFor();
    await view.getByText('1 row is left out').waitFor();
    // What nobody knows stays unknown until somebody says what it is; the nearest class is offered.
    await expect.poll(() => view.getByLabel('No subject is called B77Z').inputValue()).toBe('');
    await view.getByRole('button', { name: /^Nearest: Wide-body jet/ }).waitFor();
    await view.getByRole('button', { name: 'Add 2 movements' }).click();
    const row = view.getByRole('row', { name: /departure B77Z ZZ1/ });
    await row.getByText('not known by name: choose one').waitFor();
    await expect.poll(() => row.innerText()).not.toMatch(/score/);
    await row.getByRole('button', { name: /^Take Wide-body jet/ }).click();
    await view
      .getByRole('row', { name: /departure B77Z ZZ1 B77Z is not in the list: figures for Wide-body jet/ })
      .waitFor();
    await view.getByText('1 more on other days').waitFor();
    const saved = page.waitForEvent('download');
    await view.getByRole('button', { name: 'Save as table' }).click();
    expect((await saved).suggestedFilename()).toMatch(/^movements-\d{4}-\d\d-\d\d\.csv$/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await row.getByText('not known by name: choose one').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await view.getByRole('row', { name: /B77Z/ }).waitFor({ state: 'detached' });
    expect(opened.complaints).toEqual([]);
  });
});

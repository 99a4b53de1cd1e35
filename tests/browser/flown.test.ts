import { describe, expect, test } from 'vitest';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { arrivalOf24, departureOf06, gpxOf, madeFlight } from '../support/made-flights';
import { flownArrival, flownSurvey, inJune, tenYearsOfWind } from './flown-survey';
import { thorough } from '../support/thorough';
import { onePage } from './page';

const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1 };
const flights = [
  ...Array.from({ length: 12 }, (_, i) => madeFlight(`a${i}`, arrivalOf24({ ...flownArrival, seed: i + 1 }))),
  ...Array.from({ length: 7 }, (_, i) => madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 }))),
];
describe('[B260] what really flies', () => {
  const opened = onePage({ map: false, width: 1280, height: 900 });
  const open = async (
    count: number,
    text = flownSurvey(flights.slice(0, count)),
    name = 'What really flies',
  ) => {
    const { page } = opened;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'flown.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(text),
    });
    await page.getByRole('button', { name, exact: true }).click();
    return page.getByRole('region', { name, exact: true });
  };

  test('per end and kind; one click puts the medians into the survey, one undo takes them out', async () => {
    const { page } = opened;
    const view = await open(flights.length);
    await view.getByRole('heading', { name: '24 arrivals, 12 flights' }).waitFor();
    await view.getByRole('heading', { name: '06 departures, 7 flights' }).waitFor();
    await expect.poll(() => view.getByText('3.40°').first().innerText()).toContain('3.40°');
    await view.getByRole('button', { name: 'Take these values' }).click();
    await page
      .getByRole('button', { name: /06\/24/ })
      .first()
      .click();
    const glide = page.getByLabel(/Glide/).nth(1);
    await expect.poll(() => glide.inputValue()).toBe('3.4');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => glide.inputValue()).toBe('3');
    expect(opened.complaints).toEqual([]);
  });

  test('too few flights: how many are needed, and no button that does nothing', async () => {
    const view = await open(2);
    await view.getByText('24 arrivals: 5 flights of one kind are needed; there are 2.').waitFor();
    await expect.poll(() => view.getByRole('button', { name: 'Take these values' }).count()).toBe(0);
  });

  test('[B272] a folder of hundreds of flights at once: all are read, a broken one is named, and they are learned from', async () => {
    const { page, context } = opened;
    const folder = mkdtempSync(join(tmpdir(), 'flights-'));
    mkdirSync(join(folder, 'sub'));
    const count = 240;
    for (let i = 0; i < count; i++) {
      const flight = madeFlight(
        `Flight ${i}`,
        arrivalOf24({ ...flownArrival, seed: i + 1 }),
        true,
        Date.UTC(2026, 5, 1 + (i % 28), 10),
      );
      writeFileSync(join(folder, i % 2 ? 'sub' : '', `flight-${i}.gpx`), gpxOf(flight));
    }
    writeFileSync(join(folder, 'broken.gpx'), gpxOf(flights[0] as (typeof flights)[number]).slice(0, 900));
    const view = await open(0);
    const devtools = await context.newCDPSession(page);
    const data = { items: [], files: [folder], dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await devtools.send('Input.dispatchDragEvent', { type, x: 640, y: 300, data });
    const dialog = page.getByRole('dialog');
    await dialog
      .getByText(/broken\.gpx/)
      .first()
      .waitFor();
    await dialog.getByRole('button', { name: `Bring ${count} things in` }).click();
    await view.getByRole('heading', { name: `24 arrivals, ${count} flights` }).waitFor();
    await expect.poll(() => view.getByText('3.40°').first().count()).toBe(1);
    expect(opened.complaints).toEqual([]);
  });

  test.skipIf(!thorough)(
    '[B275] a season of 500 flights of 1,000 points opens; all teach, 24 stand on the cards, and one more is chosen (npm run thorough)',
    async () => {
      const { page } = opened;
      // Twenty different ones, over and over: placing half a million points takes longer than opening them.
      const some = Array.from({ length: 20 }, (_, i) =>
        madeFlight('', arrivalOf24({ ...flownArrival, every: 10_950 / 66 / 1000, seed: i + 1 })),
      );
      const season = Array.from({ length: 500 }, (_, i) => {
        const made = some[i % some.length] as (typeof some)[number];
        return { ...made, id: `s${i}`, properties: { ...made.properties, name: `s${i}` } };
      });
      const view = await open(0, flownSurvey(season));
      await view.getByRole('heading', { name: '24 arrivals, 500 flights' }).waitFor();
      const onTheCard = () => page.getByRole('heading', { name: /^s\d+/ }).count();
      await page
        .getByRole('button', { name: /^Mound/ })
        .first()
        .click();
      await expect.poll(onTheCard).toBe(24);
      await page.getByRole('button', { name: 'List more of 500' }).click();
      await page.getByRole('button', { name: /^s150/ }).first().click();
      const chosen = page.getByLabel('Look at this flight from the spots');
      await expect.poll(() => chosen.isChecked()).toBe(false);
      await chosen.check();
      await page
        .getByRole('button', { name: /^Mound/ })
        .first()
        .click();
      await expect.poll(() => page.getByRole('heading', { name: /^s150/ }).count()).toBe(1);
      await expect.poll(onTheCard).toBe(24);
      expect(opened.complaints).toEqual([]);
    },
  );

  test('[B273] flights and winds side by side: which counts is said, chosen in one step, and taken back', async () => {
    const { page } = opened;
    const view = await open(0, flownSurvey(inJune(10), { windRecord: tenYearsOfWind }), 'Wind record');
    await view.getByText(/Ends in Jun by recorded flights/).waitFor();
    await view.getByLabel('Shares from').selectOption({ label: 'Past winds alone' });
    await view.getByText('Ends by past winds, as chosen: 20 recorded flights do not count.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await view.getByText(/Ends in Jun by recorded flights/).waitFor();
    expect(opened.complaints).toEqual([]);
  });

  test('[B274] a week of flights beside ten years of wind: the winds stand, and why', async () => {
    const view = await open(0, flownSurvey(inJune(7), { windRecord: tenYearsOfWind }), 'Wind record');
    await view
      .getByText(
        /14 recorded flights do not speak for a month yet, which takes 20 of them on 10 different days/,
      )
      .waitFor();
  });
});

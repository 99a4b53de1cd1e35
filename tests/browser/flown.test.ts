import { describe, expect, test } from 'vitest';
import { surveyText, spotFeature, plainSubject } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../support/made-flights';
import { onePage } from './page';

const arrival = { glide: 3.4, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1 };
const flights = [
  ...Array.from({ length: 12 }, (_, i) => madeFlight(`a${i}`, arrivalOf24({ ...arrival, seed: i + 1 }))),
  ...Array.from({ length: 7 }, (_, i) => madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 }))),
];
const survey = (count: number) =>
  surveyText([madeRunway.feature, spotFeature('Mound', [18.16, 50.918]), ...flights.slice(0, count)], {
    subjects: [plainSubject],
    site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 186 },
  });

describe('[B260] what really flies', () => {
  const opened = onePage({ map: false, width: 1280, height: 900 });
  const open = async (count: number) => {
    const { page } = opened;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'flown.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(survey(count)),
    });
    await page.getByRole('button', { name: 'What really flies' }).click();
    return page.getByRole('region', { name: 'What really flies', exact: true });
  };

  test('per end and kind; one click puts the medians into the survey, one undo takes them out', async () => {
    const { page } = opened;
    const view = await open(flights.length);
    await view.getByRole('heading', { name: '24 arrivals, 12 flights' }).waitFor();
    await view.getByRole('heading', { name: '06 departures, 7 flights' }).waitFor();
    expect(await view.getByText('3.40°').first().innerText()).toContain('3.40°');
    await view.getByRole('button', { name: 'Take these medians' }).click();
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
    expect(await view.getByRole('button', { name: 'Take these medians' }).count()).toBe(0);
  });
});

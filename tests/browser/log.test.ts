import { afterAll, describe, expect, test } from 'vitest';
import { plainKit, plainSubject, spotFeature, surveyText } from '../support/contents';
import { madeRunway } from '../support/made-flights';
import { aFolder, exiftool, writePhoto } from '../support/photos';
import { closeBrowser, onePage } from './page';

afterAll(closeBrowser);

const survey = surveyText(
  [madeRunway.feature, spotFeature('Mound', [18.16, 50.918]), spotFeature('Fence', [18.17, 50.919])],
  {
    subjects: [plainSubject],
    kit: plainKit,
    site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 186 },
    movements: [{ id: 'm', date: '2026-06-21', time: '18:01', use: 'arrival', type: 'plain', runway: '24' }],
  },
);

// Debian's libimage-exiftool-perl writes the photographs.
describe.skipIf(!exiftool)('[B261] the log from photographs', () => {
  const opened = onePage({ map: false, width: 1280, height: 900 });

  test('read, asked for many at once, kept without file names, told on the spot’s card, undone in one step', async () => {
    const folder = aFolder();
    const here = { GPSLatitude: 50.918, GPSLatitudeRef: 'N', GPSLongitude: 18.16, GPSLongitudeRef: 'E' };
    const taken = (clock: string) => ({ DateTimeOriginal: `2026:06:21 ${clock}`, FocalLength: 300 });
    const files = [
      writePhoto(folder, 'known.jpg', { ...taken('18:00:30'), ...here, 'XMP:Rating': 4 }),
      writePhoto(folder, 'one.jpg', taken('16:00:00')),
      writePhoto(folder, 'two.jpg', taken('16:30:00')),
      writePhoto(folder, 'bare.jpg', {}),
    ];
    const { page } = opened;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'log.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(survey),
    });
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    const view = page.getByRole('region', { name: 'Log', exact: true });
    const [photos] = await Promise.all([
      page.waitForEvent('filechooser'),
      view.getByRole('button', { name: 'Choose photographs' }).click(),
    ]);
    await photos.setFiles(files);
    await view.getByText('4 photographs, 3 passes').waitFor();
    await view.getByText('Mound, 24 arrival, Plain').waitFor();
    await view.getByText(/you framed at \d+ %/).waitFor();
    await view.getByText('2 passes with a question').waitFor();
    await view.getByLabel('Spot', { exact: true }).selectOption({ label: 'Fence' });
    await view.getByLabel('Path', { exact: true }).selectOption({ label: '06 departure' });
    await view.getByRole('button', { name: 'Answer for 2 passes' }).click();
    await expect.poll(() => view.getByText('Fence, 06 departure, Plain').count()).toBe(2);
    expect(await view.getByText('with a question').count()).toBe(0);
    await view.getByRole('button', { name: 'Keep 3 passes in the log' }).click();
    await view.getByText('3 passes in the log.').waitFor();
    await page
      .getByRole('button', { name: /^Mound/ })
      .first()
      .click();
    await page.getByText('From your log: 1 visit.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await view.getByText('What came of it?').waitFor();
    expect(opened.complaints).toEqual([]);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { plainKit, plainSubject, spotFeature, surveyText } from '../support/contents';
import { madeRunway } from '../support/made-flights';
import { aFolder, exiftool, jpegWith, onePixel, tiffWith, writePhoto } from '../support/photos';
import { boxAtRest, onePage } from './page';

const surveyOf = (pixelsWide: number) =>
  surveyText(
    [madeRunway.feature, spotFeature('Mound', [18.16, 50.918]), spotFeature('Fence', [18.17, 50.919])],
    {
      subjects: [plainSubject],
      kit: { ...plainKit, bodies: [{ ...plainKit.bodies[0], pixelsWide, pixelsHigh: (pixelsWide * 2) / 3 }] },
      site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 186 },
      movements: [
        { id: 'm', date: '2026-06-21', time: '18:01', use: 'arrival', type: 'plain', runway: '24' },
      ],
    },
  );

// Debian's libimage-exiftool-perl writes the photographs.
describe.skipIf(!exiftool)('[B261] the log from photographs', () => {
  const opened = onePage({ map: false, width: 1280, height: 900 });

  const openSurvey = async (text: string) => {
    const { page } = opened;
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({
      name: 'log.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(text),
    });
  };

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
    await openSurvey(surveyOf(6000));
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    const view = page.getByRole('region', { name: 'Log', exact: true });
    const [photos] = await Promise.all([
      page.waitForEvent('filechooser'),
      view.getByRole('button', { name: 'Choose photographs' }).click(),
    ]);
    await photos.setFiles(files);
    await view.getByText('4 photographs, 3 passes').waitFor();
    await view.locator('span').getByText('Mound, 24 arrival, Plain').waitFor();
    await view.getByText(/you framed at \d+ %/).waitFor();
    await view.getByText('2 passes with a question').waitFor();
    await view.getByLabel('Spot', { exact: true }).selectOption({ label: 'Fence' });
    await view.getByLabel('Path', { exact: true }).selectOption({ label: '06 departure' });
    await view.getByRole('button', { name: 'Answer for 2 passes' }).click();
    await expect.poll(() => view.locator('span').getByText('Fence, 06 departure, Plain').count()).toBe(2);
    await expect.poll(() => view.getByText('with a question').count()).toBe(0);
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

  test('[B270] measured on a frame by keys; the clock put right by a picture of a clock, and taken back', async () => {
    const { page } = opened;
    // 600 px across 36 mm: the picture is as wide as the sensor of the survey's body.
    const picture = await page.evaluate(() => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [600, 400];
      canvas.getContext('2d')?.fillRect(0, 190, 600, 20);
      return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
    });
    const folder = aFolder();
    const clock = (time: string) => ({ DateTimeOriginal: `2026:06:21 ${time}`, FocalLength: 300 });
    const files = [
      writePhoto(
        folder,
        'known.jpg',
        {
          ...clock('18:00:30'),
          GPSLatitude: 50.919,
          GPSLatitudeRef: 'N',
          GPSLongitude: 18.17,
          GPSLongitudeRef: 'E',
        },
        Buffer.from(picture, 'base64'),
      ),
      writePhoto(folder, 'clock.jpg', clock('17:00:00'), Buffer.from(picture, 'base64')),
    ];
    await openSurvey(surveyOf(600));
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    const view = page.getByRole('region', { name: 'Log', exact: true });
    const [photos] = await Promise.all([
      page.waitForEvent('filechooser'),
      view.getByRole('button', { name: 'Choose photographs' }).click(),
    ]);
    await photos.setFiles(files);
    await view.getByText('2 photographs, 2 passes').waitFor();

    await view.getByRole('button', { name: 'Measure on a frame of 18:01' }).click();
    const dialog = page.getByRole('dialog', { name: 'Measure on a frame' });
    await dialog.getByLabel('It is').selectOption({ label: 'Side-on' });
    await dialog.getByText(/It passed/).waitFor();
    const nose = dialog.getByRole('button', { name: /^Nose: 150 across, 200 down/ });
    await nose.focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('ArrowDown');
    await dialog.getByRole('button', { name: /^Nose: 200 across, 201 down/ }).waitFor();
    // 30 m on 250 px by 300 mm and 600 px on 36 mm: 30 x 300 x 16.67 / 250.
    await dialog.getByText(/It passed 600 m away/).waitFor();
    await dialog.getByRole('button', { name: 'Keep this measure' }).click();
    await view.getByText(/Measured: 600 m ± \d+ m away/).waitFor();

    await view.getByText('Camera’s clock: as it is').click();
    await view.getByLabel('Or: a picture of a clock').selectOption({ index: 1 });
    await view.getByLabel('What the clock in it shows').fill('17:00:45');
    await view.getByLabel('What the clock in it shows').press('Enter');
    await view.getByText('Camera’s clock: +0:45').waitFor();
    await view.getByRole('button', { name: 'Take the last correction back' }).click();
    await view.getByText('Camera’s clock: as it is').waitFor();
    expect(opened.complaints).toEqual([]);
  });

  test('[B271] a folder dropped on the log: all that is in it, and in the folders in it', async () => {
    const { page, context } = opened;
    const folder = aFolder();
    writePhoto(folder, 'one.jpg', { DateTimeOriginal: '2026:06:21 16:00:00' });
    writePhoto(folder, 'sub/one.jpg', { DateTimeOriginal: '2026:06:21 16:30:00' });
    await openSurvey(surveyOf(6000));
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    const view = page.getByRole('region', { name: 'Log', exact: true });
    const box = await boxAtRest(view);
    const devtools = await context.newCDPSession(page);
    const at = { x: box.x + 100, y: box.y + 40 };
    const data = { items: [], files: [folder], dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await devtools.send('Input.dispatchDragEvent', { type, ...at, data });
    await view.getByText('2 photographs, 2 passes').waitFor();
  });

  test('[B276] hostile files are doubts beside their names, the others are read; kept passes go out as a table', async () => {
    const { page } = opened;
    const folder = aFolder();
    const here = { GPSLatitude: 50.918, GPSLatitudeRef: 'N', GPSLongitude: 18.16, GPSLongitudeRef: 'E' };
    const broken = (name: string, bytes: Buffer) => writePhoto(folder, name, {}, bytes);
    const endless = [0x014a, 0x8769, 0x8825, 0xa005].map((tag) => [tag, 4, 1, 8] as const);
    const files = [
      writePhoto(folder, 'good.jpg', {
        DateTimeOriginal: '2026:06:21 18:00:30',
        FocalLength: 300,
        ...here,
        'XMP:Rating': 4,
      }),
      broken('cut.jpg', onePixel.subarray(0, 30)),
      broken('loop.jpg', jpegWith(tiffWith(endless, 8))),
      broken(
        'thumb.jpg',
        jpegWith(
          tiffWith(
            [
              [0x0201, 4, 1, 8],
              [0x0202, 4, 1, 50_000_000],
            ],
            0,
          ),
        ),
      ),
    ];
    await openSurvey(surveyOf(6000));
    await page.getByRole('button', { name: 'Log', exact: true }).click();
    const view = page.getByRole('region', { name: 'Log', exact: true });
    const [photos] = await Promise.all([
      page.waitForEvent('filechooser'),
      view.getByRole('button', { name: 'Choose photographs' }).click(),
    ]);
    await photos.setFiles(files);
    await view.getByText('4 photographs, 1 pass').waitFor();
    await view.getByText('3 photographs with a doubt').click();
    for (const name of ['cut', 'loop', 'thumb'])
      await view.getByText(new RegExp(`^${name}\\.jpg: The file`)).waitFor();
    await view.getByRole('button', { name: 'Keep 1 pass in the log' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      view.getByRole('button', { name: 'Save the log as a table (CSV)' }).click(),
    ]);
    const [heads, row, end] = readFileSync(await download.path(), 'utf8')
      .trimEnd()
      .split(/\r?\n/);
    expect(heads).toContain('Spot');
    expect(row).toContain('Mound');
    expect(`${heads}${row}`).not.toContain('good.jpg');
    expect(end).toBeUndefined();
    expect(opened.complaints).toEqual([]);
  });
});

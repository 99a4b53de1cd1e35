import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { feature, plainKit, plainSubject, runwayFeature, surveyText } from '../support/contents';
import { atRest, boxAtRest, onePage, openPage, pixelOf, type Opened } from './page';

/** One runway, one way, nothing in the way: the machine of a test has an answer soon. tests/sweep looks at towns. */
const survey = surveyText(
  [
    runwayFeature(
      'main',
      [18.16, 50.928],
      [18.174, 50.929],
      [
        { designator: '08', elevation: 180 },
        { designator: '26', elevation: 180 },
      ],
    ),
    feature(
      'lane',
      'ground-use',
      'LineString',
      [
        [18.15, 50.9255],
        [18.185, 50.9265],
      ],
      { use: 'road', access: 'public', name: 'Mill Lane' },
    ),
  ],
  {
    subjects: [plainSubject],
    kit: plainKit,
    site: { name: 'Tolverby', timeZone: 'Europe/Warsaw', elevation: 180, reference: [18.167, 50.9285] },
    // Few instants: between moments that lie half an hour apart.
    moments: { date: '2026-06-21', a: '08:00', b: '08:30' },
  },
);

const view = (page: Page) => page.getByRole('region', { name: 'Where to stand' });
const lines = (page: Page) =>
  view(page).getByRole('list', { name: 'Places to stand, best first' }).getByRole('listitem');
const spots = (page: Page) =>
  page.locator('.sheet.left').getByRole('button', { name: /^(Mill Lane|Open country)/ });

async function open(page: Page): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  const mimeType = 'application/geo+json';
  await chooser.setFiles({ name: 'field.geojson', mimeType, buffer: Buffer.from(survey) });
  await page.getByRole('button', { name: 'Where to stand' }).click();
  await view(page).getByLabel('Hours').selectOption('moments');
}
const fineness = (page: Page) =>
  view(page).evaluate((section) => Number((section as HTMLElement).dataset['fineness']));
const zoomOf = async (page: Page) => Number(await page.locator('[data-zoom]').getAttribute('data-zoom'));
const done = (page: Page) => page.locator('section.places[data-busy="false"]').waitFor({ timeout: 60_000 });

describe('where to stand', () => {
  // Without the map: drawing each finer step in software costs as much as working it out.
  const opened = onePage({ map: false });

  it('[B260] shades coarse first and then finer; a click makes a place a standing spot, and undo takes it back', async () => {
    const { page } = opened;
    await open(page);
    await expect.poll(() => fineness(page), { timeout: 30_000 }).toBeGreaterThan(0);
    await done(page);
    await expect.poll(() => fineness(page)).toBe(1);
    const count = await atRest(() => lines(page).count());
    expect(count).toBeGreaterThan(3);
    expect(count).toBeLessThanOrEqual(12);
    const before = await atRest(() => spots(page).count());
    const first = lines(page).first();
    await expect.poll(() => first.innerText()).toMatch(/good \d\d:\d\d–\d\d:\d\d/);
    await first.getByRole('button', { name: /^Make a standing spot of/ }).click();
    await first.getByRole('button', { name: /^Select/ }).waitFor();
    await expect.poll(() => spots(page).count()).toBe(before + 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await first.getByRole('button', { name: /^Make a standing spot of/ }).waitFor();
    await expect.poll(() => spots(page).count()).toBe(before);
    expect(opened.complaints).toEqual([]);
  });

  it('[B281] works out the sketch as the pointer comes to the row of views; what the button then opens has it', async () => {
    const { page } = opened;
    expect(page.workers()).toEqual([]);
    await page.getByRole('button', { name: 'Year', exact: true }).hover();
    await expect.poll(() => page.workers().length).toBe(1);
    await page.getByRole('button', { name: 'Where to stand' }).click();
    await page.locator('section.places[data-sketch="true"], section.places[data-fineness="16"]').waitFor();
    await view(page).getByLabel('Shade by').waitFor();
    await view(page)
      .getByText(/^(A sketch, as if|Looking round|A first list)/)
      .waitFor();
  });

  it('[B262] without a runway it says so, and what would help', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Find airfield' }).click();
    await page.getByRole('button', { name: 'Start an empty survey where the map is now' }).click();
    await page.getByRole('button', { name: 'Where to stand' }).click();
    await view(page)
      .getByText(/^No runway drawn yet/)
      .waitFor();
  });
});

describe('where to stand, on a phone', () => {
  const opened = onePage({ map: false, width: 360, height: 740, touch: true });

  it('[B1063] shows places first: what they are chosen by is one line until it is tapped', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: 'Light', exact: true }).click();
    await page.getByRole('button', { name: 'Where to stand' }).click();
    const chosenBy = view(page).getByText('Dawn to dusk · Good minutes');
    await chosenBy.waitFor();
    await expect.poll(() => view(page).getByLabel('Shade by').isVisible()).toBe(false);
    await lines(page).first().waitFor({ timeout: 60_000 });
    const tabs = await boxAtRest(page.getByRole('button', { name: 'Light', exact: true }));
    // Its name and what it is worth can be read without a scroll.
    await expect.poll(async () => (await boxAtRest(lines(page).first())).y).toBeLessThan(tabs.y - 48);
    await chosenBy.click();
    await view(page).getByLabel('Hours').selectOption('morning');
    await view(page).getByText('Dawn to noon · Good minutes').waitFor();
  });
});

describe('where to stand, on the map', () => {
  let opened: Opened;
  beforeAll(async () => {
    opened = await openPage({ width: 1440, height: 900 });
  });
  afterAll(() => opened.done());

  it('[B1020] once the page is at rest a worker is ready before anybody comes near; the view then opens with the click, and the map changes its size once', async () => {
    const { page } = opened;
    const ofMap = /maplibre/;
    await expect.poll(() => page.workers().filter((each) => !ofMap.test(each.url())).length).toBe(1);
    await page.getByRole('button', { name: 'Where to stand' }).click();
    await view(page).getByLabel('Shade by').waitFor();
    await page.getByRole('button', { name: 'Moments', exact: true }).click();
    await view(page).waitFor({ state: 'detached' });
    await boxAtRest(page.locator('[data-ready]'));
    const heights = await page.evaluateHandle(() => {
      const map = document.querySelector('[data-ready]') as HTMLElement;
      const seen = [map.clientHeight];
      new ResizeObserver(() => {
        if (seen.at(-1) !== map.clientHeight) seen.push(map.clientHeight);
      }).observe(map);
      return seen;
    });
    await page.getByRole('button', { name: 'Where to stand' }).click();
    await view(page).getByLabel('Shade by').waitFor();
    await page.locator('section.places[data-sketch="true"], section.places[data-fineness="16"]').waitFor();
    expect(await atRest(() => heights.jsonValue())).toHaveLength(2);
    await page.getByRole('button', { name: 'Moments', exact: true }).click();
    await view(page).waitFor({ state: 'detached' });
  });

  it('[B261] a newer question ends the older one, and closed ground says why when asked', async () => {
    const { page } = opened;
    // Each finer step and each zoom is drawn in software, at a cost that goes by the map's size.
    await page.setViewportSize({ width: 1100, height: 640 });
    await open(page);
    await view(page).getByLabel('Hours').selectOption('day');
    await view(page).getByLabel('Hours').selectOption('moments');
    await done(page);
    // What stands in the list belongs to the last question: half an hour, not the day.
    await expect.poll(() => lines(page).first().innerText()).toMatch(/\b(15|30|45) (good min|by the clock)/);
    // In the grass some 35 m north of 08/26, near enough that no line of the survey is under the pointer.
    const zoom = await atRest(() => zoomOf(page));
    await page.getByRole('button', { name: 'Zoom in' }).click();
    await expect.poll(() => zoomOf(page)).toBeGreaterThanOrEqual(zoom + 0.99);
    const at = await pixelOf(page, [18.1694, 50.92897]);
    await page.mouse.click(at.x, at.y);
    await view(page)
      .getByText(/^Closed: too close to a runway/)
      .waitFor();
    await view(page).getByLabel('Shade by').selectOption('light-a');
    await view(page).getByRole('list', { name: 'Colours of the ground: Light at A' }).waitFor();
    await view(page).getByLabel('Focal length lines').selectOption({ index: 1 });
    // [B1061] What the map does not show is pointed at from its edge while it is looked at in the list.
    const beyond = page.locator('.beyond');
    for (let i = 0; i < 4; i++) await page.getByRole('button', { name: 'Zoom in' }).click();
    await expect.poll(() => zoomOf(page)).toBeGreaterThanOrEqual(zoom + 4.9);
    await lines(page).last().hover();
    const last = String(await atRest(() => lines(page).count()));
    await expect.poll(() => beyond.textContent()).toBe(last);
    await lines(page)
      .last()
      .getByRole('button', { name: /^Show / })
      .click();
    await expect.poll(() => beyond.count()).toBe(0);
    expect(opened.complaints).toEqual([]);
  });
});

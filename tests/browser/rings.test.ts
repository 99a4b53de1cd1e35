import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tenSpots, tenSpotsSixPaths } from '../support/ten-spots';
import { atRest, boxAtRest, leaveMapOut, openPage, pixelOf, type Box, type Opened } from './page';

/** Ten spots and six paths on one field, one path 18 km long. */
async function openField(page: Page): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  const buffer = Buffer.from(tenSpotsSixPaths());
  await chooser.setFiles({ name: 'ten.geojson', mimeType: 'application/geo+json', buffer });
  await page.getByText('Willow gate', { exact: true }).first().waitFor();
}

const boxOf = (page: Page, selector: string): Promise<Box> => boxAtRest(page.locator(selector).first());
const overlap = (one: Box, other: Box): boolean =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;

describe('the map with ten spots and six paths', () => {
  let opened: Opened;
  let page: Page;
  const survey = () => page.getByRole('complementary', { name: 'What the survey contains' });
  const select = async (name: string) => {
    await survey().getByText(name, { exact: true }).click();
    await page.locator('.callout:not(.away)').waitFor();
  };
  /** The picture of the map once it stays the same. */
  async function still(): Promise<string> {
    const clip = await boxAtRest(page.locator('.map').first());
    return atRest(async () => (await page.screenshot({ clip })).toString('base64'));
  }

  beforeAll(async () => {
    opened = await openPage({ width: 1440, height: 900 });
    ({ page } = opened);
    await openField(page);
  });
  afterAll(() => opened.done());

  it('[B980] opens on the airfield: every spot beside the legend, the long track off the page', async () => {
    const map = await boxAtRest(page.locator('.map').first());
    const legend = await boxAtRest(page.locator('.legend').first());
    const places = async () => Promise.all(tenSpots.map(({ position }) => pixelOf(page, position)));
    await expect
      .poll(async () =>
        (await places()).every(
          ({ x, y }) =>
            x > legend.x + legend.width && x < map.x + map.width && y > map.y && y < map.y + map.height,
        ),
      )
      .toBe(true);
    const [first, last] = (await places())
      .map(({ x }) => x)
      .sort((a, b) => a - b)
      .filter((_, i, all) => i === 0 || i === all.length - 1);
    // A whole that was fitted to the track would leave the field a quarter of the map's width.
    expect((last ?? 0) - (first ?? 0)).toBeGreaterThan(map.width / 3);
  });

  it('[B981] a callout hides neither legend, credit nor its spot, and a leader goes to it, whichever spot is chosen', async () => {
    for (const { name, position } of tenSpots) {
      await select(name);
      // Where it stands follows its size, which the page tells a frame after its words: what counts is where it comes to rest.
      const rest = async () => {
        // At once: each of them waits for frames, which are drawn in software.
        const [callout, legend, map, credit, spot] = await Promise.all([
          boxOf(page, '.callout'),
          boxOf(page, '.legend'),
          boxOf(page, '.map'),
          boxOf(page, '.credit'),
          pixelOf(page, position),
        ]);
        const start = Number(await page.locator('.leader line').last().getAttribute('x1')) + map.x;
        return {
          overLegend: overlap(callout, legend),
          overCredit: overlap(callout, credit),
          overSpot: overlap(callout, { x: spot.x - 12, y: spot.y - 12, width: 24, height: 24 }),
          led: Math.abs(start - spot.x) < 2,
        };
      };
      await expect
        .poll(rest, { message: name })
        .toEqual({ overLegend: false, overCredit: false, overSpot: false, led: true });
    }
  });

  it('[B982] a path that is pointed at in the card shows its rings, and only as long as it is', async () => {
    await select('Willow gate');
    await page.mouse.move(700, 20);
    const headline = await still();
    const cards = page.getByRole('complementary', { name: 'What is selected' }).locator('section:has(> h4)');
    await cards.nth(1).locator('h4').hover();
    await expect.poll(still).not.toBe(headline);
    await page.mouse.move(700, 20);
    await expect.poll(still).toBe(headline);
  });

  it('[B984] a view that opens at the foot leaves the selected spot in sight', async () => {
    const { name, position } = tenSpots.reduce((a, b) => (b.position[1] < a.position[1] ? b : a));
    await select(name);
    // To the lower edge of the map.
    const map = await boxAtRest(page.locator('.map').first());
    const from = await pixelOf(page, position);
    await page.mouse.move(map.x + map.width - 120, map.y + 300);
    await page.mouse.down();
    await page.mouse.move(map.x + map.width - 120, map.y + 300 + (map.y + map.height - 40 - from.y), {
      steps: 4,
    });
    await page.mouse.up();
    await expect.poll(async () => (await pixelOf(page, position)).y).toBeGreaterThan(map.y + map.height - 60);
    await page.getByRole('button', { name: 'Light today' }).click();
    await page.getByRole('region', { name: 'Light today' }).waitFor();
    await expect
      .poll(async () => {
        const low = await boxOf(page, '.map');
        const { y } = await pixelOf(page, position);
        return low.height < map.height - 100 && y > low.y + 40 && y < low.y + low.height - 40;
      })
      .toBe(true);
    await page.getByRole('button', { name: 'Moments', exact: true }).click();
    await page.getByRole('region', { name: 'Light today' }).waitFor({ state: 'detached' });
  });

  it('[B983] rings of every path are a switch in the legend, kept for the next visit', async () => {
    const every = () => page.getByRole('main').getByLabel(/Rings of every path/);
    const headline = await still();
    await every().check();
    await expect.poll(still).not.toBe(headline);
    expect(opened.complaints).toEqual([]);
    // The legend says it before the map is there, whose start costs seconds: it is left out.
    await leaveMapOut(opened.context);
    await page.reload();
    await expect.poll(() => every().isChecked()).toBe(true);
    await every().uncheck();
    await expect.poll(() => every().isChecked()).toBe(false);
    expect(opened.complaints).toEqual([]);
  });
});

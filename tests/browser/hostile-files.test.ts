import { beforeAll, describe, expect, it } from 'vitest';
import { openHostile, watchLongTasks } from '../soak/open-hostile';
import { hostileNames, manyFeatures, surveyOf } from '../support/hostile';
import { thorough } from '../support/thorough';
import { openPage, type Opened } from './page';

let opened: Opened;
beforeAll(async () => {
  opened = await openPage({ apart: true });
  await watchLongTasks(opened.page);
  await opened.page.reload();
  await opened.page.waitForSelector('[data-ready="true"]');
});
describe.skipIf(!thorough)('files that are made to hurt (npm run thorough)', () => {
  it('[B147] names with markup and from right to left are shown as they are, and nothing of them runs', async () => {
    const { page, complaints } = opened;
    const spots = hostileNames.map((name, i) =>
      JSON.stringify({
        type: 'Feature',
        id: `${name}${i}`,
        properties: {
          kind: i % 3 === 2 ? name : 'standing-spot',
          name,
          notes: name,
          access: { contact: name },
        },
        geometry: {
          type: 'Point',
          coordinates: [8.001 + 0.004 * (i % 5), 47.001 + 0.003 * Math.floor(i / 5)],
        },
      }),
    );
    const name = JSON.stringify(hostileNames[0]);
    await openHostile(page, { name: hostileNames[0] ?? '', text: surveyOf(spots, name) });
    const list = page.getByLabel('What the survey contains');
    await list.getByText('<script>document.body.dataset.ran=1</script>').click();
    await page.getByRole('textbox', { name: 'Name', exact: true }).first().waitFor();
    // Nothing is wider than the page, whatever a name holds.
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
      .toBeLessThanOrEqual(0);
    await expect.poll(() => page.evaluate(() => document.body.dataset['ran'] ?? 'nothing')).toBe('nothing');
    await expect.poll(() => page.locator('img, iframe, script:not([src])').count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('[B148] ten thousand features leave the page able to answer', async () => {
    const { page, complaints } = opened;
    const text = manyFeatures(10_000, 'obstacle');
    const { survey, longest, blocked } = await openHostile(page, { name: 'Many', text });
    console.log(`10,000 features: longest task ${longest} ms, all long tasks ${blocked} ms`);
    expect(survey).toBe('Many');
    await page.getByRole('heading', { name: 'Obstacles 10000' }).waitFor();
    await expect
      .poll(() => page.getByLabel('What the survey contains').getByRole('listitem').count())
      .toBeLessThan(300);
    await page.getByRole('button', { name: 'List more of 10,000' }).click();
    await page.getByText('No 207', { exact: true }).waitFor();
    expect(complaints).toEqual([]);
  });

  it('[B149] the reading of a long file can be given up, and the open survey stays', async () => {
    const { page } = opened;
    let reading = 0;
    await page.route('**/opening-worker-*', () => void reading++);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).first().click(),
    ]);
    await chooser.setFiles({
      name: 'long.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(manyFeatures(10_000, 'tree')),
    });
    await page.getByText('Reading long.geojson').waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await expect.poll(() => page.getByText('Reading long.geojson').count()).toBe(0);
    expect(reading).toBe(1);
    await expect.poll(() => page.getByLabel('Name of the survey').inputValue()).toBe('Many');
  });
});

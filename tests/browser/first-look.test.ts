import { describe, expect, it } from 'vitest';
import { openPage, urlOf } from './page';

describe('the first look', () => {
  // The map's own requests: B145.
  it('[B1] shows the sample site with nothing asked of the network but the page itself', async () => {
    const asked: string[] = [];
    const { page, complaints, done } = await openPage({
      map: false,
      onRequest: (url) => asked.push(url),
    });
    await expect.poll(() => page.getByLabel('Name of the survey').inputValue()).toBe('Tolverby');
    await page.getByRole('heading', { name: 'Runways 2' }).waitFor();
    await page.getByRole('heading', { name: 'Standing spots 5' }).waitFor();
    const foreign = asked.filter(
      (url) => !url.startsWith(urlOf({ map: false })) && !/^(data|blob):/.test(url),
    );
    expect(foreign).toEqual([]);
    expect(complaints).toEqual([]);
    await done();
  });

  it('[B2] says before any spot is chosen which side of each runway is lit, and when that changes', async () => {
    const { page, done } = await openPage({ map: false });
    const strip = page.getByLabel('Moments and light');
    await expect.poll(() => strip.innerText()).toMatch(/south side/);
    await expect.poll(() => strip.innerText()).toMatch(/sunrise 04:3\d, sunset 21:0\d/);
    await done();
  });

  it('[B3] fits a phone of 360 px: nothing is wider than the page', async () => {
    const { page, done } = await openPage({ width: 360, height: 740, touch: true, map: false });
    for (const tab of ['Survey', 'Airfield', 'Light', 'Map']) {
      await page.getByRole('button', { name: tab, exact: true }).click();
      const wider = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      await expect.poll(wider, { message: tab }).toBeLessThanOrEqual(0);
    }
    await done();
  });
});

import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage, openTab } from './page';
import { rename, statusOf, surveyName } from './tabs';

interface Feature {
  readonly id: string;
  readonly properties: Record<string, unknown> & { kind: string; name?: string };
  readonly geometry: { readonly type: string; readonly coordinates: unknown };
}
interface Field {
  readonly features: readonly Feature[];
}
const sample = JSON.parse(await readFile('sample-sites/tolverby.geojson', 'utf8')) as Field;
const spots = sample.features.filter(({ properties }) => properties.kind === 'standing-spot');
const [first, ...others] = spots;
const second = others.find(({ properties }) => properties['eyeHeight'] !== undefined);

/** The sample site as a friend has it: one spot moved, another one's eye higher, a third one new. */
function friends(): string {
  const features = sample.features.map((feature): Feature => {
    if (feature.id === first?.id) {
      const [lng, lat] = feature.geometry.coordinates as [number, number];
      return { ...feature, geometry: { type: 'Point', coordinates: [lng + 0.001, lat] } };
    }
    if (feature.id === second?.id)
      return { ...feature, properties: { ...feature.properties, eyeHeight: 12 } };
    return feature;
  });
  const fresh: Feature = {
    id: 'friends1',
    properties: { kind: 'standing-spot', name: 'Mound by the weir' },
    geometry: { type: 'Point', coordinates: [18.18, 50.925] },
  };
  return JSON.stringify({ ...sample, features: [...features, fresh] });
}

const dock = (page: Page) => page.getByRole('region', { name: /^Merge with/ });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ }).first();

async function beginMerge(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).press('Enter');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Merge', exact: true }).press('Enter'),
  ]);
  await chooser.setFiles([
    { name: 'friend.geojson', mimeType: 'application/geo+json', buffer: Buffer.from(friends()) },
  ]);
  await dock(page).waitFor();
}

async function savedIn(page: Page): Promise<Field> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return JSON.parse(await readFile(await download.path(), 'utf8')) as Field;
}

const complaintsOfAxe = async (page: Page): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
    };
    return (await axe.run('section.dock')).violations.map(({ id }) => id);
  });
};

describe('merging', () => {
  it('[B263] a friend’s file by keyboard alone: mine, theirs and both, one undo', async () => {
    const { page, complaints, done } = await openPage({ map: false });
    await beginMerge(page);
    // The heading has the focus: what follows is reached by Tab and chosen by arrow keys.
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('merge-title');
    await expect
      .poll(() => dock(page).getByRole('status').innerText())
      .toMatch(/^2 differences, 2 still to decide\. 1 thing is new/);
    await expect.poll(() => complaintsOfAxe(page)).toEqual([]);
    const groups = dock(page).getByRole('group');
    const place = groups.filter({ hasText: 'place' });
    await place.getByRole('radio', { name: /^Mine/ }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => place.getByRole('radio', { name: /^Theirs/ }).isChecked()).toBe(true);
    await page.keyboard.press('Tab');
    // The next group's first radio button.
    await page.keyboard.press('Space');
    await expect
      .poll(() => groups.filter({ hasText: 'eye height' }).getByRole('radio', { name: /^Mine/ }).isChecked())
      .toBe(true);
    await page.keyboard.press('ArrowLeft');
    await dock(page).getByText('mine, and theirs beside it').waitFor();
    const merge = dock(page).getByRole('button', { name: 'Merge', exact: true });
    await merge.focus();
    await page.keyboard.press('Enter');
    await dock(page).waitFor({ state: 'detached' });
    const merged = await savedIn(page);
    expect(merged.features).toHaveLength(sample.features.length + 2);
    const at = (id: string | undefined) => merged.features.find((feature) => feature.id === id);
    expect((at(first?.id)?.geometry.coordinates as number[])[0]).toBeCloseTo(
      (first?.geometry.coordinates as [number, number])[0] + 0.001,
    );
    const heights = merged.features
      .filter(({ properties }) => properties.name === second?.properties.name)
      .map(({ properties }) => properties['eyeHeight']);
    expect(heights).toEqual([second?.properties['eyeHeight'], 12]);
    await undo(page).press('Enter');
    expect((await savedIn(page)).features).toEqual(sample.features);
    expect(complaints).toEqual([]);
    await done();
  });

  it('[B264] two tabs: what each changed is in both', async () => {
    const { context, page, complaints, done } = await openPage({ map: false });
    await rename(page, 'From here');
    await expect.poll(() => statusOf(page)).toBe('Kept on this device');
    const other = await openTab(context);
    await expect.poll(() => surveyName(other).inputValue()).toBe('From here');
    // Deaf to each other, as where browsers have no channel between tabs: both change what they came from.
    await page.evaluate(() => (BroadcastChannel.prototype.postMessage = () => undefined));
    await page
      .getByText(first?.properties.name ?? '', { exact: true })
      .first()
      .click();
    const name = page.getByLabel('Name', { exact: true });
    await name.fill('Renamed here');
    await name.press('Enter');
    await expect.poll(() => statusOf(page)).toBe('Kept on this device');
    await rename(other, 'From there');
    await other.getByRole('button', { name: 'Merge both' }).press('Enter');
    await dock(other).waitFor();
    await dock(other).getByRole('button', { name: 'Merge', exact: true }).press('Enter');
    await expect.poll(() => statusOf(other)).toBe('Kept on this device');
    await expect.poll(() => surveyName(other).inputValue()).toBe('From there');
    await other.getByText('Renamed here', { exact: true }).first().waitFor();
    await page.bringToFront();
    await expect.poll(() => surveyName(page).inputValue()).toBe('From there');
    expect(complaints).toEqual([]);
    await done();
  });
});

import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { onePage } from './page';

const opened = onePage({ map: false });
const dialog = (page: Page) => page.getByRole('dialog', { name: 'Near me' });

async function openDialog(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Menu', exact: true }).click();
  await page.getByRole('button', { name: 'Near me', exact: true }).click();
  await dialog(page).waitFor();
}
const rows = (page: Page) =>
  dialog(page).getByRole('list', { name: 'Airfields, nearest first' }).locator('> li');

describe('airfields near a place', () => {
  it('[B265] from typed coordinates: nearest first, with ride, strips and light; nothing asked of the device', async () => {
    const { page, context } = opened;
    await context.grantPermissions([]);
    await openDialog(page);
    await dialog(page).getByLabel('From', { exact: true }).fill('52.3105, 4.7683');
    await dialog(page).getByLabel('From', { exact: true }).press('Enter');
    await rows(page).first().waitFor();
    const km = async () =>
      (await rows(page).allInnerTexts()).map((text) => Number(/([\d.]+) km, about/.exec(text)?.[1]));
    const distances = await km();
    expect(distances.length).toBeGreaterThan(1);
    expect(distances).toEqual([...distances].sort((a, b) => a - b));
    await dialog(page)
      .getByText(/^\d\d.*: (north|south|east|west).* side \d\d:\d\d–/)
      .first()
      .waitFor();
    // Twice the speed, twice the reach.
    const before = Math.max(...distances);
    await dialog(page).getByLabel('Speed, km/h').fill('32');
    await dialog(page).getByLabel('Speed, km/h').press('Enter');
    await expect.poll(async () => Math.max(...(await km()))).toBeGreaterThan(before);
    await page.evaluate(axe.source);
    const complaints = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run(where: string): Promise<{ violations: { id: string }[] }> };
      };
      return (await axe.run('dialog[open]')).violations.map(({ id }) => id);
    });
    expect(complaints).toEqual([]);
    expect(opened.complaints).toEqual([]);
  });

  it('[B266] a position that is refused leaves a way on; where one starts from stays on the device', async () => {
    const { page, context } = opened;
    await openDialog(page);
    // Without a permission the browser refuses at once.
    await dialog(page).getByRole('button', { name: 'Where I am' }).click();
    await dialog(page).getByText('Type a town, an airfield or coordinates instead.').waitFor();
    await context.grantPermissions(['geolocation']);
    await context.setGeolocation({ longitude: 4.7683, latitude: 52.3105 });
    await dialog(page).getByRole('button', { name: 'Where I am' }).click();
    await rows(page).first().waitFor();
    await page.reload();
    await openDialog(page);
    await rows(page).first().waitFor();
    await dialog(page).getByRole('button', { name: 'Forget it' }).click();
    await dialog(page).getByText('Say where you start from.').waitFor();
    expect(opened.complaints).toEqual([]);
  });
});

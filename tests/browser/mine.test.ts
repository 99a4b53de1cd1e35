import { expect, test } from 'vitest';
import { onePage } from './page';

const opened = onePage({ map: false });

test('[B962] a kit that was entered in one survey is that of the next; a survey that brings another offers the swap', async () => {
  const { page } = opened;
  const chooser = page.locator('summary', { hasText: 'Subject and kit' });
  const left = page.getByLabel('What the survey contains');
  await chooser.click();
  await left.getByRole('button', { name: 'Edit kit and subjects' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Add a lens' }).click();
  await dialog.getByLabel('Focal length, mm').fill('500');
  await dialog.getByLabel('Widest aperture, f-number').fill('4');
  await dialog.getByLabel('Extenders').fill('1.4');
  await dialog.getByRole('button', { name: 'Save' }).click();
  // Nobody named it: it is called by its figures.
  await dialog.getByText('500 mm f/4', { exact: true }).waitFor();
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Find airfield' }).click();
  await page.getByRole('combobox', { name: /Code, name or town/ }).fill('54.2, 18.9');
  await page.getByRole('option', { name: /Start a survey here/ }).click();
  await page.getByText('A new survey. Draw its first runway').waitFor();
  await left.getByText('500 mm f/4').waitFor();
  await expect.poll(() => left.getByText(/not yours/).count()).toBe(0);
  expect(opened.complaints).toEqual([]);
});

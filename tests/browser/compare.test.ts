import { describe, expect, it } from 'vitest';
import { onePage } from './page';

const opened = onePage({ map: false });

describe('comparing moment A with moment B', () => {
  it('[B30] puts A and B side by side for the selected spot, with the factors of the score', async () => {
    const { page, complaints } = opened;
    await page.getByRole('button', { name: /^Orchard Path/ }).click();
    const sheet = page.getByLabel('What is selected');
    await expect.poll(() => sheet.innerText()).toMatch(/25 arrival/);
    const text = () => sheet.innerText();
    await expect.poll(text).toMatch(/(front|side|back|top)-lit/);
    await expect.poll(text).toMatch(/\d+ mm/);
    expect(complaints).toEqual([]);
  });

  it('[B31] a quick choice sets a moment an hour before sunset, and the figures follow', async () => {
    const { page } = opened;
    const time = page.getByLabel('B', { exact: true });
    await expect.poll(() => time.inputValue()).toBe('19:00');
    const choice = page.getByLabel('Set B by the sun');
    const label = await choice.locator('option', { hasText: '1 h before sunset' }).innerText();
    await choice.selectOption({ label });
    await expect.poll(() => time.inputValue()).toMatch(/^20:0\d$/);
    await page.keyboard.press('Control+z');
    await expect.poll(() => time.inputValue()).toBe('19:00');
  });

  it('[B32] shows other paths when the traffic turns round', async () => {
    const { page } = opened;
    await page.getByRole('button', { name: /^Mill Lane/ }).click();
    const sheet = page.getByLabel('What is selected');
    await expect.poll(() => sheet.innerText()).toMatch(/25 arrival/);
    await page.getByRole('button', { name: 'Turn the traffic round' }).click();
    await expect.poll(() => sheet.innerText()).toMatch(/07 arrival/);
  });
});

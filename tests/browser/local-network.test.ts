import { chromium } from 'playwright-core';
import { expect, it } from 'vitest';
import { chromiumArgs, shellPath } from '../support/chromium';
import { serveStatically } from '../support/static-server';
import { leaveMapOut, mapReady, patience, pixelRatio } from './page';
import { rename, statusOf, surveyName } from './tabs';

it('[B146] works over plain http in a local network, and says in Preferences what the browser withholds', async () => {
  const server = await serveStatically();
  const browser = await chromium.launch({
    executablePath: shellPath() ?? '',
    // Any name but localhost makes the page insecure, as an address in a local network does.
    args: [...chromiumArgs, '--host-resolver-rules=MAP lan.test 127.0.0.1'],
  });
  const page = await browser.newPage({
    locale: 'en-GB',
    reducedMotion: 'reduce',
    viewport: { width: 1100, height: 800 },
    deviceScaleFactor: pixelRatio({ map: true }),
  });
  page.setDefaultTimeout(patience);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const url = `http://lan.test:${server.port}/`;
  await page.goto(url);
  await mapReady(page);
  const there = await page.evaluate(() => [
    isSecureContext,
    'serviceWorker' in navigator,
    'locks' in navigator,
    'storage' in navigator,
    'randomUUID' in crypto,
  ]);
  expect(there).toEqual([false, false, false, false, false]);
  await rename(page, 'From the car');
  await expect.poll(() => statusOf(page)).toBe('Kept on this device');
  // The map has shown that it draws; a second start of it would show nothing new.
  await leaveMapOut(page.context());
  await page.reload();
  await expect.poll(() => surveyName(page).inputValue()).toBe('From the car');
  await page.getByRole('button', { name: 'Surveys', exact: true }).click();
  await page.getByRole('dialog').getByText('From the car').first().waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Preferences' }).first().click();
  await expect
    .poll(() => page.getByRole('dialog').innerText())
    .toMatch(/over plain http, so the browser withholds: starting without a network/);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'At the field', exact: true }).click();
  const field = page.getByRole('region', { name: 'At the field' });
  await field.getByRole('button', { name: 'Where am I', exact: true }).click();
  await expect
    .poll(() => field.getByRole('status').innerText())
    .toContain('This page came by plain http, where browsers give no position. Open it by https, or choose');
  expect(complaints).toEqual([]);
  await browser.close();
  await server.close();
});

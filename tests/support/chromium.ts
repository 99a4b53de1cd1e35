import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
];

/** The browser of the machine: CHROMIUM names it, else the usual places are tried. */
export const chromiumPath = (): string | null =>
  [process.env['CHROMIUM'] ?? '', ...places].find((path) => path !== '' && existsSync(path)) ?? null;

/** Software rendering, and none of the browser's own errands on the network. */
export const chromiumArgs = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
];

export function launchChromium(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (!executablePath)
    throw new Error('expected Chromium on this machine; npm test looks for it in its pretest step');
  return chromium.launch({ executablePath, args: chromiumArgs });
}

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

/** WebGL drawn in software; what is no WebGL is painted without it, which takes a tenth less processor. */
const drawing = [
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-gpu-rasterization',
];

/** None of the browser's own errands on the network. */
const quiet = [
  '--no-sandbox',
  '--disable-background-networking',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
];

export const chromiumArgs = [...drawing, ...quiet];

/** Without WebGL a page is put together at a fraction of the cost. */
export function launchChromium({ webgl = true } = {}): Promise<Browser> {
  const executablePath = chromiumPath();
  if (!executablePath)
    throw new Error('expected Chromium on this machine; npm test looks for it in its pretest step');
  return chromium.launch({ executablePath, args: webgl ? chromiumArgs : ['--disable-gpu', ...quiet] });
}

import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
];

/**
 * Chromium's engine without windows, extensions and a process kept in reserve: a file of tests without the map takes a
 * quarter less processor (tests/browser/keep.test.ts: 21.7 s for 28.2 s), one with the map as much as in the whole browser,
 * which starts it slower and draws its frames faster.
 */
const shells = ['/usr/lib/chromium/chromium-headless-shell', '/usr/bin/chromium-headless-shell'];

const firstOf = (paths: readonly string[]): string | null =>
  [process.env['CHROMIUM'] ?? '', ...paths].find((path) => path !== '' && existsSync(path)) ?? null;

/** The browser of the machine: CHROMIUM names it, else the usual places are tried. */
export const chromiumPath = (): string | null => firstOf([...places, ...shells]);

/** What the tests drive: the engine alone where it is installed. */
export const shellPath = (): string | null => firstOf([...shells, ...places]);

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

/**
 * For tests. WebGL's picture is put into the page by the processor too: by software's idea of a graphics card a drag on
 * the map, a selection and a zoom took 4.0 s of processor, this way 2.9 s.
 */
export const chromiumArgs = [...drawing, '--disable-gpu-compositing', ...quiet];

/** Without WebGL a page is put together at a fraction of the cost. `shell`: the engine alone, as the tests drive it. */
export function launchChromium({ webgl = true, shell = false } = {}): Promise<Browser> {
  const executablePath = shell ? shellPath() : chromiumPath();
  if (!executablePath)
    throw new Error('expected Chromium on this machine; npm test looks for it in its pretest step');
  const drawn = shell ? chromiumArgs : [...drawing, ...quiet];
  const args = webgl ? drawn : ['--disable-gpu', ...quiet];
  return chromium.launch({ executablePath, args });
}

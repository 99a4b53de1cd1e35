import { preview } from 'vite';
import { launchChromium } from '../support/chromium.ts';
import { manyFeatures, nested, surveyOf } from '../support/hostile.ts';
import { openHostile, watchLongTasks, type HostileFile } from './open-hostile.ts';

/**
 * `npm run hostile`: opens files that are made to hurt in a real Chromium, and prints what the page says and how long
 * its longest task was. Nothing here passes or fails by time; a page that does not answer ends the run with status 1.
 */
const line = Array.from({ length: 2_000_000 }, (_, i) => `[8.${i},47.1]`).join(',');
const files: readonly HostileFile[] = [
  { name: '100,000 standing spots', text: manyFeatures(100_000, 'standing-spot') },
  { name: '100,000 obstacles', text: manyFeatures(100_000, 'obstacle') },
  { name: '100,000 of no known kind', text: manyFeatures(100_000, 'tree') },
  {
    name: '100,000 without ids',
    text: manyFeatures(100_000, 'obstacle').replaceAll(/"id":"f\d+",/g, ''),
  },
  {
    name: '50 MB: one name',
    text: surveyOf([
      `{"type":"Feature","id":"s","properties":{"kind":"standing-spot","name":"${'n '.repeat(25e6)}"},"geometry":{"type":"Point","coordinates":[8,47]}}`,
    ]),
  },
  {
    name: '50 MB: one line',
    text: surveyOf([
      `{"type":"Feature","id":"t","properties":{"kind":"taxi-route"},"geometry":{"type":"LineString","coordinates":[${line}]}}`,
    ]),
  },
  { name: '50 MB that break off', text: `[${'1,'.repeat(25e6)}` },
  { name: '50 MB of nothing', text: ' '.repeat(50e6) },
  {
    name: 'nested 10,000 deep',
    text: surveyOf([`{"type":"Feature","id":"s","properties":{"x":${nested(10_000)}},"geometry":null}`]),
  },
];

const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
const address = server.httpServer.address();
if (typeof address !== 'object' || address === null)
  throw new Error('expected the preview server to have a port');
const browser = await launchChromium();
console.log('   MB   longest task, ms   all long tasks, ms   until at rest, ms   file: what the page says');
for (const file of files) {
  const context = await browser.newContext({ serviceWorkers: 'block', reducedMotion: 'reduce' });
  const page = await context.newPage();
  await page.addInitScript(() => void Reflect.deleteProperty(window, 'showOpenFilePicker'));
  await watchLongTasks(page);
  await page.goto(`http://127.0.0.1:${address.port}/`);
  await page.waitForSelector('[data-ready="true"]');
  const named = { ...file, name: 'Many' };
  const { longest, blocked, took, notice, survey } = await openHostile(page, named);
  const cells = [(file.text.length / 1e6).toFixed(1).padStart(5), String(longest).padStart(18)];
  console.log(
    `${cells.join(' ')} ${String(blocked).padStart(20)} ${String(took).padStart(19)}   ${file.name}: ${notice || '-'} [${survey}]`,
  );
  await context.close();
}
await browser.close();
await server.close();

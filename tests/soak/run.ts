import { preview } from 'vite';
import { killAgainAndAgain } from './kills.ts';

/**
 * `npm run soak -- [KILLS] [SEED]`: kills the browser again and again while a survey is edited, and prints what was
 * lost. Ends with status 1 when an edit older than a second was.
 */
const [kills = 60, seed = 1] = process.argv.slice(2).map(Number);
const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
const address = server.httpServer.address();
if (typeof address !== 'object' || address === null)
  throw new Error('expected the preview server to have a port');

const columns = [
  'kill',
  'edited for, ms',
  'edits',
  'lost',
  'oldest lost, ms',
  'lost older than 1 s',
  'lost though "kept"',
];
const print = (cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, i) => String(cell).padStart(columns[i]?.length ?? 0)).join('  '));

console.log(`Seed ${seed}`);
print(columns);
const sums = { kills: 0, edits: 0, lost: 0, oldestLost: 0, lostOld: 0, lostKept: 0 };
const options = {
  url: `http://127.0.0.1:${address.port}/`,
  kills,
  seed,
  map: true,
  between: [200, 5_000],
} as const;
for await (const kill of killAgainAndAgain(options)) {
  sums.kills++;
  sums.edits += kill.edits;
  sums.lost += kill.lost;
  sums.oldestLost = Math.max(sums.oldestLost, kill.oldestLost);
  sums.lostOld += kill.lostOld;
  sums.lostKept += kill.lostKept;
  print([sums.kills, kill.after, kill.edits, kill.lost, kill.oldestLost, kill.lostOld, kill.lostKept]);
}
await server.close();
console.log(
  `${sums.kills} kills, ${sums.edits} edits, ${sums.lost} lost, the oldest of them ${sums.oldestLost} ms old; ` +
    `older than a second: ${sums.lostOld}; lost though said to be kept: ${sums.lostKept}`,
);
if (sums.lostOld + sums.lostKept > 0) process.exitCode = 1;

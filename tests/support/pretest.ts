import { execFileSync } from 'node:child_process';
import { chromiumPath } from './chromium.ts';

/** What the tests need besides `npm ci`: a Chromium, the catalogue and the built app. */

function run(command: string, ...args: string[]): void {
  execFileSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] });
}

function findChromium(): void {
  if (chromiumPath()) return;
  if (process.getuid?.() !== 0) {
    console.error(
      'The browser tests need Chromium. Install it (on Debian: apt-get install chromium), or name it: CHROMIUM=/path npm test',
    );
    process.exit(1);
  }
  console.log("No Chromium found: installing Debian's package chromium.");
  run('apt-get', 'update', '-qq');
  run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium');
}

findChromium();
run('npm', 'run', '-s', 'build', '--', '--logLevel', 'warn');

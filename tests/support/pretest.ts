import { execFileSync } from 'node:child_process';
import { chromiumPath } from './chromium.ts';

/** What the tests need besides `npm ci`: a Chromium, the catalogue and the built app. */

function run(command: string, ...args: string[]): void {
  execFileSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] });
}

/** A Chromium that is there stays as it is; where none is, the engine alone is installed if Debian has it, else the browser. */
function findChromium(): void {
  if (chromiumPath()) return;
  if (process.getuid?.() !== 0) {
    console.error(
      'The browser tests need Chromium. Install it (on Debian: apt-get install chromium-headless-shell), or name it: CHROMIUM=/path npm test',
    );
    process.exit(1);
  }
  console.log("Installing Debian's package chromium-headless-shell for the browser tests.");
  try {
    install('chromium-headless-shell');
  } catch {
    install('chromium');
  }
}

function install(name: string): void {
  run('apt-get', 'update', '-qq');
  run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', name);
}

findChromium();
run('npm', 'run', '-s', 'build', '--', '--logLevel', 'warn');

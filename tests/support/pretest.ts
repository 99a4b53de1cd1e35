import { execFileSync } from 'node:child_process';
import { chromiumPath, hasShell } from './chromium.ts';

/** What the tests need besides `npm ci`: a Chromium, the catalogue and the built app. */

function run(command: string, ...args: string[]): void {
  execFileSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] });
}

/** The engine alone, where Debian has it; else the whole browser. What is installed without being root stays as it is. */
function findChromium(): void {
  if (hasShell() || process.env['CHROMIUM']) return;
  if (process.getuid?.() !== 0) {
    if (chromiumPath()) return;
    console.error(
      'The browser tests need Chromium. Install it (on Debian: apt-get install chromium-headless-shell), or name it: CHROMIUM=/path npm test',
    );
    process.exit(1);
  }
  console.log("Installing Debian's package chromium-headless-shell for the browser tests.");
  try {
    install('chromium-headless-shell');
  } catch {
    if (!chromiumPath()) install('chromium');
  }
}

function install(name: string): void {
  run('apt-get', 'update', '-qq');
  run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', name);
}

findChromium();
run('npm', 'run', '-s', 'build', '--', '--logLevel', 'warn');

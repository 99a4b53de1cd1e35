import { spawn, type ChildProcess } from 'node:child_process';
import { chromium, type Browser, type BrowserContext } from 'playwright-core';
import { chromiumArgs, shellPath } from '../support/chromium.ts';

/** A browser with a profile that outlives it, in a process group of its own that can be killed as a whole. */
export interface MortalBrowser {
  readonly context: BrowserContext;
  /** SIGKILL to every process of it: none of them runs another line. Resolves when they are gone. */
  kill(): Promise<void>;
}

export async function startMortal(profile: string): Promise<MortalBrowser> {
  const executablePath = shellPath();
  if (!executablePath) throw new Error('expected Chromium on this machine');
  const args = [
    ...chromiumArgs,
    '--headless',
    '--remote-debugging-port=0',
    `--user-data-dir=${profile}`,
    'about:blank',
  ];
  const process = spawn(executablePath, args, { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  let browser: Browser;
  try {
    browser = await chromium.connectOverCDP(await devToolsAddress(process));
  } catch (error) {
    await killGroup(process);
    throw error;
  }
  const [context] = browser.contexts();
  if (!context) throw new Error('expected a browser with its own profile');
  return {
    context,
    async kill() {
      await killGroup(process);
      await browser.close();
    },
  };
}

/** The browser prints where it listens. */
function devToolsAddress({ stderr }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    stderr?.setEncoding('utf8');
    stderr?.on('data', (text: string) => {
      printed += text;
      const address = /DevTools listening on (ws:\S+)/.exec(printed)?.[1];
      if (address) resolve(address);
    });
    stderr?.on('close', () => reject(new Error(`expected Chromium to listen, it printed: ${printed}`)));
  });
}

function killGroup(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once('exit', () => resolve());
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
  });
}

import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { command } from '../../src/cli/figures';

export interface Ended {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The figures command in this process: a start of its own costs two seconds of processor. */
export async function runCommand(...args: readonly string[]): Promise<Ended> {
  const written = { out: '', err: '' };
  const into = (stream: keyof typeof written) => ({
    write: (text: string | Uint8Array) => {
      written[stream] += String(text);
      return true;
    },
  });
  const status = await command(args, Date.now(), { out: into('out'), err: into('err') });
  return { status, ...written };
}

/** The command as `npm run -s figures --` starts it, less the process in which tsx starts that: for what only a process can show. */
export function startCommand(...args: readonly string[]): Ended {
  const child = spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/figures.ts', ...args], {
    cwd: fileURLToPath(new URL('../../', import.meta.url)),
    encoding: 'utf8',
  });
  return { status: child.status, out: child.stdout, err: child.stderr };
}

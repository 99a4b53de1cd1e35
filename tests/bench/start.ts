import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';

/**
 * Runs the benchmarks as one script, as the program itself is built: what runs TypeScript unbuilt gives every function
 * its name anew whenever one is made, which doubled some of the times.
 */
const root = join(import.meta.dirname, '../..');
// Within node_modules, so that what is not of the script is found.
const out = join(root, 'node_modules/.bench');

/** Files find what lies beside them by where they stood before they were put together. */
const whereTheyStood: Plugin = {
  name: 'where-they-stood',
  transform: (code, id) =>
    id.includes('node_modules')
      ? null
      : code
          .replaceAll('import.meta.dirname', JSON.stringify(join(id, '..')))
          .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)),
};

await build({
  configFile: false,
  logLevel: 'error',
  root,
  plugins: [whereTheyStood],
  define: { 'import.meta.env.DEV': 'false' },
  build: {
    ssr: join(root, 'tests/bench/run.ts'),
    outDir: out,
    emptyOutDir: true,
    minify: false,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'run.mjs' } },
  },
});
const { status } = spawnSync(process.execPath, [join(out, 'run.mjs'), ...process.argv.slice(2)], {
  stdio: 'inherit',
  cwd: root,
});
rmSync(out, { recursive: true, force: true });
process.exitCode = status ?? 1;

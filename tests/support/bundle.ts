import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** One script out of a module of the tests and all that it imports, for a page that holds nothing else. */
export async function bundled(entry: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    root: fileURLToPath(new URL('../../', import.meta.url)),
    build: {
      write: false,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL(`../${entry}`, import.meta.url)),
        formats: ['iife'],
        name: 'tested',
      },
    },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!output || !('output' in output)) throw new Error('expected a bundle');
  return output.output[0].code;
}

import { readFileSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import { preview, type Plugin } from 'vite';
import type { TestProject } from 'vitest/node';
import { mediaTypes } from './static-server.ts';

const dist = resolve(import.meta.dirname, '../../dist');

/**
 * Parts of the program as a good host sends them: to be kept, since their names change with what is in them. Otherwise
 * each start of a page would read and compile them all again. Without the map its part never arrives, as on a very slow
 * line; all else runs. (Done by the browser's own routing, nothing is kept at all.)
 */
const parts = (map: boolean): Plugin => ({
  name: 'parts-to-keep',
  configurePreviewServer({ middlewares, config }) {
    const known = new Map<string, Buffer>();
    middlewares.use('/assets', (request, response, next) => {
      const name = /^\/[\w.-]+/.exec(request.url ?? '')?.[0] ?? '';
      const body = !map && /^\/map-view-.*\.js$/.test(name) ? neverThere : (known.get(name) ?? partOf(name));
      if (!body) return next();
      known.set(name, body);
      for (const [header, value] of Object.entries(config.preview.headers))
        if (value !== undefined) response.setHeader(header, value);
      response.setHeader('Content-Type', mediaTypes[extname(name)] ?? 'application/octet-stream');
      response.setHeader('Cache-Control', 'public, max-age=31536000, immutable');
      response.end(body);
    });
  },
});
const neverThere = Buffer.from('await new Promise(() => undefined);');
function partOf(name: string): Buffer | null {
  try {
    return readFileSync(`${dist}/assets${name}`);
  } catch {
    return null;
  }
}

/** Serves the built app for the browser tests, on ports of its own: once as it is, once without the map. */
export default async function serve(project: TestProject) {
  const servers = [await serveOn(true), await serveOn(false)] as const;
  const [baseUrl, bareUrl] = servers.map(({ url }) => url);
  project.provide('baseUrl', baseUrl ?? '');
  project.provide('bareUrl', bareUrl ?? '');
  return async () => void (await Promise.all(servers.map(({ server }) => server.close())));
}

async function serveOn(map: boolean) {
  const server = await preview({
    preview: { port: 0, host: '127.0.0.1' },
    logLevel: 'warn',
    plugins: [parts(map)],
  });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || address === null)
    throw new Error('expected the preview server to have a port');
  return { server, url: `http://127.0.0.1:${address.port}/` };
}

declare module 'vitest' {
  interface ProvidedContext {
    baseUrl: string;
    /** The same without the map. */
    bareUrl: string;
  }
}

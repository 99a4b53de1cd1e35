import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

const dist = resolve(import.meta.dirname, '../../dist');

export const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.geojson': 'application/geo+json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** The built program on a plain static host: no headers of its own, any host name. */
export interface StaticServer {
  readonly port: number;
  readonly url: string;
  /** Paths that were asked for. */
  readonly asked: string[];
  /** Changes a file of the build as it is sent, by its path: "another version". */
  alter: (path: string, text: string) => string;
  /** Gone, with every connection: the network is down. */
  close(): Promise<void>;
}

export async function serveStatically(): Promise<StaticServer> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    asked.push(pathname);
    void answer(pathname.endsWith('/') ? `${pathname}index.html` : pathname).then(
      (content) =>
        response
          .writeHead(200, {
            'Content-Type': mediaTypes[extname(pathname)] ?? mediaTypes['.html'],
            'Cache-Control': 'no-cache',
          })
          .end(content),
      () => response.writeHead(404).end(),
    );
  });
  async function answer(path: string): Promise<Buffer> {
    const file = join(dist, path);
    if (!file.startsWith(dist + sep)) throw new Error('expected a path within the build');
    const content = await readFile(file);
    const text = content.toString('latin1');
    const altered = result.alter(path, text);
    return altered === text ? content : Buffer.from(altered, 'latin1');
  }
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const port = portOf(server);
  const result: StaticServer = {
    port,
    url: `http://127.0.0.1:${port}/`,
    asked,
    alter: (_path, text) => text,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
  return result;
}

function portOf(server: Server): number {
  const address = server.address();
  if (typeof address !== 'object' || address === null) throw new Error('expected the server to have a port');
  return address.port;
}

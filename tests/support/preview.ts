import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

/** Serves the built app for the browser tests, on a port of its own. */
export default async function serve(project: TestProject) {
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
  const address = server.httpServer.address();
  if (typeof address !== 'object' || address === null)
    throw new Error('expected the preview server to have a port');
  project.provide('baseUrl', `http://127.0.0.1:${address.port}/`);
  return () => server.close();
}

declare module 'vitest' {
  interface ProvidedContext {
    baseUrl: string;
  }
}

import type { Plugin } from 'vite';

/** Addresses that the user may choose map tiles from: any by https, and a tile server on the own machine. */
const tileServers = ['https:', 'http://localhost:*', 'http://127.0.0.1:*'];

/**
 * What the page may load and run (W3C Content Security Policy Level 3). Nothing inline and no eval: a name in a survey file
 * can never become a program. Only pictures and data may come from elsewhere, for the map that the user chooses.
 */
const directives: Readonly<Record<string, readonly string[]>> = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'worker-src': ["'self'"],
  'style-src': ["'self'"],
  'font-src': ["'self'"],
  'manifest-src': ["'self'"],
  // data: and blob: are pictures that the page or the map library draws itself.
  'img-src': ["'self'", 'data:', 'blob:', ...tileServers],
  'connect-src': ["'self'", 'data:', 'blob:', ...tileServers],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
};

const written = (all: typeof directives) =>
  Object.entries(all)
    .map(([name, sources]) => `${name} ${sources.join(' ')}`)
    .join('; ');

/** For the `<meta>` of the page: a static host sends no headers. */
export const contentSecurityPolicy = written(directives);

/** Headers of `npm start`. `frame-ancestors` is heeded in a header only. */
export const securityHeaders = {
  'Content-Security-Policy': written({ ...directives, 'frame-ancestors': ["'none'"] }),
  'X-Content-Type-Options': 'nosniff',
};

/** Writes the policy into the built page. Not in development: there the dev server works with inline styles. */
export const policyInPage = (): Plugin => ({
  name: 'sunside-content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      // Before anything that it is to govern.
      injectTo: 'head-prepend',
    },
  ],
});

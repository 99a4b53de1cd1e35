import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { policyInPage, securityHeaders } from './src/cli/page/content-security-policy.ts';
import { webApp } from './src/cli/page/web-app.ts';

export default defineConfig({
  root: 'src',
  base: './',
  plugins: [svelte(), policyInPage(), webApp()],
  // sax asks for Node's streams and does without where there are none.
  resolve: { alias: { stream: fileURLToPath(new URL('./src/imports/osm/no-stream.ts', import.meta.url)) } },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    // What the page starts with is one file: cut in thirty where late parts share some of it, it takes 6 kB more, compressed.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'start', tags: ['$initial'] }] } } },
  },
  worker: { format: 'es' },
  preview: { port: 4173, host: '127.0.0.1', headers: securityHeaders },
  server: { port: 5173, host: '127.0.0.1', fs: { allow: ['..'] } },
});

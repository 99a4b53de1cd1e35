import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src',
  base: './',
  plugins: [svelte()],
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', sourcemap: true },
  worker: { format: 'es' },
  preview: { port: 4173, host: '127.0.0.1' },
  server: { port: 5173, host: '127.0.0.1', fs: { allow: ['..'] } },
});

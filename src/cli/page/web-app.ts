import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { drawIcon, icons } from './icons.ts';

/** The icons that the manifest names, drawn when the page is built. */
const drawIcons = (): Plugin => ({
  name: 'sunside-icons',
  apply: 'build',
  generateBundle() {
    for (const icon of icons)
      this.emitFile({ type: 'asset', fileName: icon.fileName, source: drawIcon(icon) });
  },
});

/** What makes the page a program that can be installed and starts without a network. */
export const webApp = () => [
  drawIcons(),
  VitePWA({
    // A new version waits until the user takes it: an edit is never interrupted (src/program.svelte.ts registers).
    registerType: 'prompt',
    injectRegister: false,
    manifest: {
      name: 'Sunside',
      short_name: 'Sunside',
      description: 'Survey an airfield for aircraft photography from outside the fence.',
      lang: 'en',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#f5f0e3',
      theme_color: '#f5f0e3',
      categories: ['photo', 'utilities'],
      icons: [
        { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ...icons.map(({ fileName, size, maskable }) => ({
          src: fileName,
          sizes: `${size}x${size}`,
          type: 'image/png',
          purpose: maskable ? 'maskable' : 'any',
        })),
      ],
    },
    workbox: {
      // All that the program may ask its own server for: panels and data that are loaded late belong to it.
      globPatterns: ['**/*.{html,js,css,json,geojson,pmtiles,tif,woff2,svg,png,webmanifest}'],
      globIgnores: ['sw.js', 'workbox-*.js'],
      maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
      // Files with a hash in their name never change.
      dontCacheBustURLsMatching: /^assets\//,
      cleanupOutdatedCaches: true,
      sourcemap: false,
      clientsClaim: true,
      // The page with any query is the page; what else lies on this server is none of the worker's business.
      navigateFallback: null,
      ignoreURLParametersMatching: [/./],
    },
  }),
];

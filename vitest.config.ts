import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

/** What replaces globals of the browser has its modules to itself. */
const apart = [
  'tests/*.test.ts',
  ...['app', 'keeping', 'map', 'services', 'soak', 'state', 'storage'].map(
    (room) => `tests/${room}/**/*.test.ts`,
  ),
];

export default defineConfig({
  test: {
    // Two files at a time, pages among them: a page waits more than it computes.
    maxWorkers: 2,
    reporters: ['default', './tests/support/plain-reporter.ts'],
    projects: [
      {
        plugins: [svelte()],
        test: {
          name: 'unit',
          environment: 'node',
          // Modules are read once a worker: pure functions keep nothing between files that a test could see.
          isolate: false,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...apart],
          // Generous: a busy machine is no failure. Nothing here waits for a clock.
          testTimeout: 60_000,
        },
      },
      {
        plugins: [svelte()],
        test: { name: 'apart', environment: 'node', include: apart, testTimeout: 60_000 },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['./tests/support/preview.ts'],
          // A worker keeps its browser, and pages that one file hands back serve the next.
          isolate: false,
          setupFiles: ['./tests/support/pages.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // A busy machine is no failure: what is polled for may take its time.
          expect: { poll: { timeout: 15_000 } },
        },
      },
    ],
  },
});

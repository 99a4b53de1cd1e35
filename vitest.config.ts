import { readdirSync, readFileSync } from 'node:fs';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import InTurn from './tests/support/in-turn.ts';

/** What replaces modules, globals or the clock has a worker to itself; the others share theirs, with all it has read. */
const replaces = /\bvi\.(mock|stubGlobal|useFakeTimers)\b|fake-indexeddb|\bglobalThis\.\w+ = /;
const apart = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((file) => `tests/${file}`)
  .filter((file) => file.endsWith('.test.ts') && !file.startsWith('tests/browser/'))
  .filter((file) => replaces.test(readFileSync(file, 'utf8')));

export default defineConfig({
  test: {
    // Two files at a time, pages among them: a page waits more than it computes.
    maxWorkers: 2,
    sequence: { sequencer: InTurn },
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
          testTimeout: 180_000,
        },
      },
      {
        plugins: [svelte()],
        test: { name: 'apart', environment: 'node', include: apart, testTimeout: 180_000 },
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
          // A busy machine is no failure: what is waited and polled for may take its time.
          testTimeout: 180_000,
          hookTimeout: 180_000,
          expect: { poll: { timeout: 60_000 } },
        },
      },
    ],
  },
});

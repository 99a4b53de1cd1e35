import { afterAll } from 'vitest';
import { closePages } from '../browser/page';

/** Runs around each file of browser tests: what it opened is there for the next one. */
afterAll(closePages);

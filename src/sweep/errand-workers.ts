import { ErrandClient, type ErrandHand } from './errand-client';

/** Errands in a worker of this browser. */
export const errandClient = (): ErrandClient =>
  new ErrandClient(
    () => new Worker(new URL('./errand-worker.ts', import.meta.url), { type: 'module' }) as ErrandHand,
  );

import { SweepClient, type Hand } from './client';

/** The sweep over the cores of this machine, one left for the page where there are more than two. */
export const sweepClient = (): SweepClient => {
  const cores = typeof navigator === 'undefined' ? 1 : (navigator.hardwareConcurrency ?? 2);
  return new SweepClient(
    () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }) as Hand,
    cores > 2 ? cores - 1 : cores,
  );
};

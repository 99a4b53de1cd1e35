import type { Learner } from '../state/flown.svelte';

/** Learning from recorded flights, by a worker: built by services/learning.ts. */
export interface Learning {
  /** Loaded when first asked for; the worker is made with the first question. */
  learner(): Promise<Learner>;
}

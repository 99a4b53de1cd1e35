import type { Learned, ToLearnFrom } from '../figures/flown/learn';
import type { PackedFlights } from '../figures/flown/packed-flights';

/** What the page asks of the worker that learns from flights: name -> [request, response]. */
export interface LearningJobs {
  /** Flights for all questions until the next ones. */
  flights: [request: PackedFlights, response: null];
  /** What they teach about these runways. A newer one, or `cancel`, ends the one before. */
  learn: [request: Omit<ToLearnFrom, 'flights'>, response: Learned];
  cancel: [request: null, response: null];
}

export type LearningRequest = {
  [J in keyof LearningJobs]: { readonly id: number; readonly job: J; readonly request: LearningJobs[J][0] };
}[keyof LearningJobs];

export type LearningAnswer =
  /** Share of the flights that are done, 0 to 1. */
  | { readonly id: number; readonly progress: number }
  | { readonly id: number; readonly learned: Learned }
  | { readonly id: number; readonly cancelled: true }
  /** An error in the program, not in the flights. */
  | { readonly id: number; readonly failed: string };

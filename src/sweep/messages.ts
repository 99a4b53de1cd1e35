import type { Contents } from '../survey/contents';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Proposed } from './candidates';
import type { SweepAsked } from './plan';
import type { CellFigures } from './sweep';

/** Everything that goes between page and workers: name -> [request, response]. */
export interface Messages {
  /** The ground's heights, for all questions until the next ones. */
  terrain: [ElevationGrid | null, null];
  /** The survey, for all questions until the next one: what is built of it is kept. */
  survey: [Contents, null];
  /** A question about them; it holds until the next one. */
  ask: [SweepAsked, null];
  /** The coarsest cells at a glance (`sketchOf`). */
  sketch: [null, { readonly figures: CellFigures }];
  /** Some of its cells. `took`: ms of the worker. */
  cells: [{ readonly cells: Int32Array }, { readonly figures: CellFigures; readonly took: number }];
  /** The places to propose from the cells that are known and may be proposed. */
  candidates: [{ readonly figures: CellFigures }, Proposed];
}

export type MessageName = keyof Messages;

/** `question`: which one it belongs to; what belongs to an older one is answered with `cancelled`. */
export type Request = {
  [N in MessageName]: {
    readonly id: number;
    readonly question: number;
    readonly name: N;
    readonly body: Messages[N][0];
  };
}[MessageName];

export type Response =
  | {
      [N in MessageName]: { readonly id: number; readonly name: N; readonly body: Messages[N][1] };
    }[MessageName]
  | { readonly id: number; readonly name: 'failed' | 'cancelled'; readonly body: string };

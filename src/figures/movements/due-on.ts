import type { Movement } from '../../survey/schema/movement';
import { instantOf } from '../../time/local-time';

export interface DueMovement {
  readonly movement: Movement;
  /** ms since 1970, UTC. */
  readonly instant: number;
}

/** What is due on a date at the airfield, in the order of time: what is due every day among it. */
export const dueOn = (movements: readonly Movement[], date: string, zone: string): DueMovement[] =>
  movements
    .filter((m) => m.date === null || m.date === date)
    .map((movement) => ({ movement, instant: instantOf(date, movement.time, zone) }))
    .sort((a, b) => a.instant - b.instant);

import type { ChosenWindow } from '../../survey/schema/plan';
import { dateAt, isoInstant } from '../../time/local-time';
import type { PlanStay } from './day-plan';
import type { TakenAlong } from './taken-along';

/** The stays of a plan as windows that can be taken along. */
export const chosenWindows = (stays: readonly PlanStay[]): ChosenWindow[] =>
  stays.map(({ window: { row, from, to } }) => ({
    spot: row.spot.id,
    path: row.path.ref.path,
    from: isoInstant(from),
    to: isoInstant(to),
  }));

/** Those windows that begin on a local date. */
export const takenOn = (taken: readonly TakenAlong[], date: string, timeZone: string): TakenAlong[] =>
  taken.filter(({ from }) => dateAt(from, timeZone) === date);

import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { DayPlan } from './day-plan';
import type { PlanWindow } from './windows';

/** Where to go under another flow while one would stay somewhere: the part of a window that falls into the stay. */
export interface Instead {
  readonly window: PlanWindow;
  readonly from: number;
  readonly to: number;
}

/** Some time at a spot. */
export interface TimeAt {
  readonly spot: StandingSpot;
  readonly from: number;
  readonly to: number;
}

/**
 * The window of another flow's plan that brings most during a stay, minutes of the way taken off at its beginning; at
 * equal worth the nearer one. Null when nothing is worth it then.
 */
export function insteadOf(
  stay: TimeAt,
  other: DayPlan,
  minutesTo: (spot: StandingSpot) => number,
): Instead | null {
  let [best, most]: [Instead | null, number] = [null, 0];
  for (const window of other.windows) {
    const arrive = stay.from + (window.row.spot === stay.spot ? 0 : minutesTo(window.row.spot) * 60_000);
    const [from, to] = [Math.max(window.from, arrive), Math.min(window.to, stay.to)];
    const brings = ((to - from) / (window.to - window.from)) * window.worth;
    if (to - from > 0 && brings > most + 1e-9) [best, most] = [{ window, from, to }, brings];
  }
  return best;
}

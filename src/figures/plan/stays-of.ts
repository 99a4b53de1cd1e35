import type { StandingSpot } from '../../survey/schema/standing-spot';
import { dateAt } from '../../time/local-time';
import type { MoveTime } from './move-time';
import type { TakenAlong } from './taken-along';

/** Time at a spot: one or several windows that overlap, arrivals and departures of one hour for instance. */
export interface Stay {
  readonly spot: StandingSpot | null;
  readonly from: number;
  readonly to: number;
  readonly windows: readonly TakenAlong[];
  /** The way from where one stood before on the same day; null at the first of a day, and where one stays. */
  readonly way: (MoveTime & { readonly from: StandingSpot; readonly leave: number }) | null;
}

/** Windows in order of time, those of one spot that overlap as one stay. Days are those of the airfield's `timeZone`. */
export function staysOf(
  taken: readonly TakenAlong[],
  timeZone: string,
  moveBetween: (a: StandingSpot, b: StandingSpot) => MoveTime,
): Stay[] {
  const stays: Stay[] = [];
  for (const window of taken.toSorted((a, b) => a.from - b.from)) {
    const at = stays.findIndex(
      ({ windows: [first], to }) => first?.chosen.spot === window.chosen.spot && window.from < to,
    );
    const stay = stays[at];
    if (!stay)
      stays.push({ spot: window.spot, from: window.from, to: window.to, windows: [window], way: null });
    else stays[at] = { ...stay, to: Math.max(stay.to, window.to), windows: [...stay.windows, window] };
  }
  return stays.map((stay, i) => ({ ...stay, way: wayTo(stay, stays[i - 1] ?? null, timeZone, moveBetween) }));
}

function wayTo(
  { spot, from }: Stay,
  before: Stay | null,
  timeZone: string,
  moveBetween: (a: StandingSpot, b: StandingSpot) => MoveTime,
): Stay['way'] {
  if (!spot || !before?.spot || before.spot.id === spot.id) return null;
  if (dateAt(before.from, timeZone) !== dateAt(from, timeZone)) return null;
  const move = moveBetween(before.spot, spot);
  return { ...move, from: before.spot, leave: from - move.minutes * 60_000 };
}

import type { Instead, TimeAt } from '../../figures/plan/instead';
import type { MoveTime } from '../../figures/plan/move-time';
import type { TurnedPlan } from '../../state/plans.svelte';
import type { Contents } from '../../survey/contents';
import type { EndRef } from '../../survey/schema/site';
import type { Formats } from '../formats';
import { moveWords, spotName } from './plan-words';

/** "25", "25 and 32": ends by name. */
export const endsWords = (ends: readonly EndRef[], { runways }: Pick<Contents, 'runways'>): string =>
  ends
    .map(({ runway, end }) => {
      const found = runways.find((r) => r.id === runway);
      return found?.ends[end].designator || found?.name || 'an end';
    })
    .join(' and ');

/** "25 in use", "25 for arrivals, 32 for departures". */
export function flowWords(
  { arrivals, departures }: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>,
  contents: Pick<Contents, 'runways'>,
): string {
  const [landing, leaving] = [endsWords(arrivals, contents), endsWords(departures, contents)];
  if (landing === leaving) return landing ? `${landing} in use` : 'no end in use';
  return `${landing || 'no end'} for arrivals, ${leaving || 'no end'} for departures`;
}

/** "If the wind turns to about 073°". */
export const turnWords = ({ windFrom }: Pick<TurnedPlan, 'windFrom'>, format: Formats): string =>
  windFrom === null ? 'If the ends change' : `If the wind turns to about ${format.bearing(windFrom)}`;

/** The same with the ends that come into use then. */
export const windTurnWords = (
  { windFrom, flow }: Pick<TurnedPlan, 'windFrom' | 'flow'>,
  contents: Pick<Contents, 'runways'>,
  format: Formats,
): string =>
  `${turnWords({ windFrom }, format)} (${[flow.name, flowWords(flow, contents)].filter(Boolean).join(': ')})`;

/** What to do under another flow during a stay. `way`: to the spot of `instead`. */
export function insteadWords(
  stay: TimeAt,
  instead: Instead | null,
  way: (spot: TimeAt['spot']) => MoveTime,
  clock: (instant: number) => string,
): string {
  if (!instead) return 'nothing is worth it then';
  const { row } = instead.window;
  const when = `${clock(instead.from)}–${clock(instead.to)}`;
  if (row.spot.id === stay.spot.id) return `stay, for ${row.path.name}, ${when}`;
  return `go to ${spotName(row.spot)} for ${row.path.name}, ${when} (${moveWords(way(row.spot))})`;
}

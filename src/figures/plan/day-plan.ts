import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Day } from '../../time/day-share';
import { RAD, wrap360, DEG } from '../geometry/angles';
import { endGeometry } from '../traffic/runway-geometry';
import type { DueMovement } from '../movements/due-on';
import type { ElevationGrid } from '../sight/terrain';
import { everyPath } from '../traffic/every-path';
import { fieldElevation } from '../traffic/paths';
import { dayRows, rankedRows, type DayRow } from '../when/day-rows';
import { flownPaths, type FlowSpan, type OtherFlow } from './flow-spans';
import { actWindows, type ActWindow } from './act-windows';
import { actRows } from './act-rows';
import { programmeFor, type Programme } from './acts-due';
import { dueOnPath } from './due';
import { ladderOf } from './ladder';
import { moveByWays } from './move-by-ways';
import { estimatedMove, type MoveTime } from './move-time';
import { gains, windowOf, windowsOf, type PlanWindow } from './windows';

/** One rung of the day's ladder. */
export interface PlanStay {
  readonly window: PlanWindow;
  /** The way there from the stay before; null at the first, and where one stays. */
  readonly move: (MoveTime & { readonly from: StandingSpot; readonly leave: number }) | null;
}

export interface DayPlan {
  /** Best first. */
  readonly windows: readonly PlanWindow[];
  /** What the day's programmes have, act by act, each where it is best, if anywhere. */
  readonly acts: readonly ActWindow[];
  /** Where to stand when, in order. */
  readonly stays: readonly PlanStay[];
  readonly outOfReach: number;
  readonly hidden: number;
  readonly nobody: readonly StandingSpot[];
}

/** Minutes between two spots: the survey's own word, else over its roads and paths, else an estimate straight across. */
export function moveTime(
  contents: Pick<Contents, 'plan' | 'runways' | 'groundUses' | 'site'>,
  a: StandingSpot,
  b: StandingSpot,
): MoveTime {
  const { plan, runways } = contents;
  const stated = plan.moves.find(({ between }) => between.includes(a.id) && between.includes(b.id));
  const estimate =
    moveByWays(a.position, b.position, contents, plan.by) ?? estimatedMove(a.position, b.position, runways);
  return stated ? { ...estimate, minutes: stated.minutes, by: 'stated' } : estimate;
}

/**
 * Every spot through the day for all the flows that a plan may be made for: worked out once for all of them. Acts of a
 * programme whose type is known have rows of their own, framed for it.
 */
export const planRows = (
  contents: Contents,
  flows: readonly Pick<OtherFlow, 'arrivals' | 'departures'>[],
  day: Day,
  terrain: ElevationGrid | null,
  programmes: readonly Programme[] = [],
): DayRow[] => [
  ...dayRows(
    contents,
    everyPath(contents, flownPaths(flows.map((flow) => ({ ...day, ...flow }))), terrain),
    day,
    terrain,
  ),
  ...actRows(contents, programmes, day, terrain),
];

/** The plan of a day for the ends in use through it, out of `planRows` that cover them. `due`, `programmes`: what that day has,
 * the same programmes as the rows were made for. */
export function dayPlan(
  contents: Contents,
  rows: readonly DayRow[],
  spans: readonly FlowSpan[],
  day: Day,
  due: readonly DueMovement[] = [],
  programmes: readonly Programme[] = [],
): DayPlan {
  const flown = flownPaths(spans);
  const { ranked, ...left } = rankedRows(
    rows.filter(({ path: { ref } }) => flown(ref.kind, ref.runway, ref.end)),
  );
  const gained = ranked.map((row) => {
    const { ref } = row.path;
    const expected = {
      due: dueOnPath(due, ref, contents.runways),
      programme: programmeFor(programmes, row, contents.subject),
    };
    return { row, expected, gain: gains(row, day.from, spans, expected) };
  });
  const windows = gained.flatMap(({ row, expected }) => windowsOf(row, day.from, spans, expected));
  const stays = ladderOf(gained, (a, b) => moveTime(contents, a, b).minutes).map(
    ({ row, from, to, move }): PlanStay => {
      const { gain, expected } = gained.find((g) => g.row === row) as (typeof gained)[number];
      const window = windowOf(row, gain, day.from, from, to, spans, expected);
      const way = move && moveTime(contents, move.from, row.spot);
      return {
        window,
        move: move && way && { ...way, from: move.from, leave: window.from - way.minutes * 60_000 },
      };
    },
  );
  windows.sort((a, b) => b.worth - a.worth);
  return { windows, acts: actWindows(windows, programmes, contents.subject), stays, ...left };
}

/**
 * Degrees true that the wind comes from when a flow is in use, roughly: the mean of its landing directions, or where it
 * has no arrivals of its take-off directions. Null for a flow without ends.
 */
export function windFor(contents: Contents, { arrivals, departures }: OtherFlow): number | null {
  let [east, north] = [0, 0];
  for (const { runway: id, end } of arrivals.length > 0 ? arrivals : departures) {
    const runway = contents.runways.find((r) => r.id === id);
    const geometry = runway && endGeometry(runway, end, fieldElevation(contents));
    if (!geometry) continue;
    east += Math.sin(geometry.bearing * RAD);
    north += Math.cos(geometry.bearing * RAD);
  }
  return Math.hypot(east, north) < 1e-6 ? null : wrap360(Math.atan2(east, north) * DEG);
}

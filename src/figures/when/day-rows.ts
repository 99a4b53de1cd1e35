import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Subject } from '../../survey/schema/subject';
import { evenSteps, type Day } from '../../time/day-share';
import { shutSteps } from '../access/shut-steps';
import { standingOf, type Standing } from '../plan/standing';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { keptViews } from './still-views';
import type { Path } from '../traffic/paths';
import { lightRow, lightRuns, worthOf, type LightRow, type LightRun } from './light-row';
import type { StillView } from './still-view';

/** Minutes that one entry of a day's row stands for. */
export const dayStepMinutes = 5;

/** One spot and path through a day. */
export interface DayRow {
  readonly key: string;
  readonly spot: StandingSpot;
  readonly path: Path;
  /** What it is framed for. */
  readonly subject: Subject;
  readonly standing: Standing;
  /** 1 at each step outside the hours of the spot; null where none are known. */
  readonly shut: Uint8Array | null;
  readonly view: StillView;
  readonly light: LightRow;
  readonly runs: readonly LightRun[];
  /** Hours of perfect pictures that the day is worth here. */
  readonly worth: number;
}

type Light = Pick<DayRow, 'light' | 'runs' | 'worth'>;
const kept = new Memo<Light>();

function lightOf(view: StillView, spot: StandingSpot, instants: Float64Array): Light {
  const light = lightRow(view, spot.position, instants);
  return { light, runs: lightRuns(light), worth: worthOf(light, dayStepMinutes * 60_000) };
}

/**
 * Every spot and path through a day, in the survey's order. Computed only where something has changed. `views`: keeps the
 * paths as seen from each spot; `wanted`: the instants of the day's steps that light is told for, NaN for the others.
 */
export function dayRows(
  contents: Contents,
  paths: readonly Path[],
  day: Day,
  terrain: ElevationGrid | null,
  scratch: Scratch = new Scratch(),
  views: typeof keptViews = keptViews,
  wanted: readonly number[] | null = null,
): DayRow[] {
  const { subject } = contents;
  const steps = evenSteps(day, dayStepMinutes);
  const instants = wanted ? Float64Array.from(wanted) : steps;
  return contents.spots.flatMap((spot) => {
    const standing = standingOf(spot, contents, day.from);
    const shut = shutSteps(spot, contents, steps);
    return views(spot, paths, contents, day.from, terrain, scratch).flatMap((view, i) => {
      const path = paths[i];
      if (!path) return [];
      const light = kept.get([view, spot, day.from, day.to, wanted], () => lightOf(view, spot, instants));
      return [{ key: `${spot.id} ${path.ref.path}`, spot, path, subject, standing, shut, view, ...light }];
    });
  });
}

/** The rows that are ranked, most worth first, and what is left out of the ranking. */
export function rankedRows(rows: readonly DayRow[]): {
  readonly ranked: readonly DayRow[];
  /** Paths that the kit cannot reach from where they are looked at, and those wholly hidden. */
  readonly outOfReach: number;
  readonly hidden: number;
  /** Spots where nobody may stand. */
  readonly nobody: readonly StandingSpot[];
} {
  const allowed = rows.filter((row) => row.standing !== 'nobody');
  const usable = allowed.filter(({ view }) => view.usable);
  const seen = usable.filter(({ view }) => view.inSight);
  return {
    ranked: seen.toSorted((a, b) => b.worth - a.worth),
    outOfReach: allowed.length - usable.length,
    hidden: usable.length - seen.length,
    nobody: [...new Set(rows.filter((row) => row.standing === 'nobody').map(({ spot }) => spot))],
  };
}

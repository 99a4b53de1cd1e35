import type { Contents } from '../../survey/contents';
import type { ChosenWindow } from '../../survey/schema/plan';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { parseInstant } from '../../time/local-time';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { outlookOf } from '../outlook';
import { stillViewsOf } from '../when/still-views';
import { pathsOf } from '../traffic/paths';
import { readRow, type RowReading } from '../when/light-row';

/** A chosen window with what is at it now: the spot or path may have been changed since. */
export interface TakenAlong {
  readonly chosen: ChosenWindow;
  readonly from: number;
  readonly to: number;
  /** Null when the spot is not in the survey any more. */
  readonly spot: StandingSpot | null;
  /** As people say it; the path's key where the survey has none such any more. */
  readonly pathName: string;
  /** The best picture in the middle of it; null without spot or path. */
  readonly reading: RowReading | null;
}

/** The windows of the plan in order of time; what is no stretch of time is passed over. */
export function takenAlong(contents: Contents, terrain: ElevationGrid | null = null): TakenAlong[] {
  const paths = pathsOf(contents, () => true, terrain);
  const scratch = new Scratch();
  return contents.plan.chosen
    .flatMap((chosen): TakenAlong[] => {
      const [from, to] = [parseInstant(chosen.from), parseInstant(chosen.to)];
      if (from === null || to === null || to <= from) return [];
      const spot = contents.spots.find(({ id }) => id === chosen.spot) ?? null;
      const path = paths.find(({ ref }) => ref.path === chosen.path);
      const middle = (from + to) / 2;
      const [view] =
        spot && path ? stillViewsOf(spot, [path], outlookOf(contents, terrain), middle, scratch) : [];
      const reading = view && spot ? readRow(view, spot.position, middle) : null;
      return [{ chosen, from, to, spot, pathName: path?.name ?? chosen.path, reading }];
    })
    .sort((a, b) => a.from - b.from);
}

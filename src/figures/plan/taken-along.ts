import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import type { ChosenWindow } from '../../survey/schema/plan';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { parseInstant } from '../../time/local-time';
import { positionOf } from '../geometry/earth';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { framed } from '../frame/frame-for';
import { nothingPinned } from '../optics/settings';
import type { SettingsCard } from '../optics/settings-card';
import { verdictFor } from '../optics/verdict';
import { lensToTake } from '../summary/spot-summary';
import type { Path } from '../traffic/paths';
import type { Verdict } from '../types';
import { outlookOf, type Outlook } from '../outlook';
import { stillViewsOf } from '../when/still-views';
import { everyPath } from '../traffic/every-path';
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
  /** Where the aircraft is then. */
  readonly at: Position | null;
  /** The lens to take for it, and what to set; null without a lens. */
  readonly lens: Verdict | null;
  readonly settings: SettingsCard | null;
}

/**
 * Windows in order of time, those of the plan unless others are given; what is no stretch of time is passed over.
 */
export function takenAlong(
  contents: Contents,
  terrain: ElevationGrid | null,
  windows: readonly ChosenWindow[] = contents.plan.chosen,
): TakenAlong[] {
  const paths = everyPath(contents, () => true, terrain);
  const outlook = outlookOf(contents, terrain);
  const scratch = new Scratch();
  return windows
    .flatMap((chosen): TakenAlong[] => {
      const [from, to] = [parseInstant(chosen.from), parseInstant(chosen.to)];
      if (from === null || to === null || to <= from) return [];
      const spot = contents.spots.find(({ id }) => id === chosen.spot) ?? null;
      const path = paths.find(({ ref }) => ref.path === chosen.path);
      const middle = (from + to) / 2;
      const [view] = spot && path ? stillViewsOf(spot, [path], outlook, middle, scratch) : [];
      const reading = view && spot ? readRow(view, spot.position, middle) : null;
      const lens = reading && lensFor(reading, contents);
      const settings =
        spot && path && reading && lens
          ? settingsFor(contents, outlook, spot, path, reading, lens, middle, scratch)
          : null;
      const at = path && reading ? placeOf(path, reading.sample) : null;
      return [{ chosen, from, to, spot, pathName: path?.name ?? chosen.path, reading, at, lens, settings }];
    })
    .sort((a, b) => a.from - b.from);
}

function placeOf({ samples: { centre } }: Path, sample: number): Position {
  const [x = NaN, y = NaN, z = NaN] = centre.subarray(3 * sample, 3 * sample + 3);
  return positionOf([x, y, z]);
}

function lensFor({ focalLength }: RowReading, { kit, body }: Contents): Verdict | null {
  if (focalLength === null) return null;
  return lensToTake(
    kit.lenses.map((lens) => verdictFor(lens, focalLength, body, kit.fill)),
    kit.fill,
  );
}

/** As the card has it: the whole aircraft, under the sky of that instant, nothing pinned. */
function settingsFor(
  contents: Contents,
  outlook: Outlook,
  spot: StandingSpot,
  path: Path,
  { sample }: RowReading,
  { lens, focalLength }: Verdict,
  instant: number,
  scratch: Scratch,
): SettingsCard {
  const hold = { portrait: false, part: 'whole' } as const;
  const pinned = { ...nothingPinned, focalLength, sky: outlook.skyAt(instant).direct };
  const station = path.samples.station[sample] ?? 0;
  return framed(spot, path, station, contents, outlook, instant, { lens, hold, pinned }, scratch).card;
}

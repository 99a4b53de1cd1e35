import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { monthAt, withinMonth } from '../../time/local-time';
import { outlookOf, type Outlook } from '../outlook';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { lookingFrom } from '../spot/looking-from';
import type { Path } from '../traffic/paths';
import { stillView, type StillView } from './still-view';

/**
 * The paths as seen from a spot, kept to be asked about many suns: light through a day and a year. Leaves hide as in the
 * month of `instant`.
 */
export function stillViewsOf(
  spot: StandingSpot,
  paths: readonly Path[],
  outlook: Outlook,
  instant: number,
  { view, lines }: Scratch = new Scratch(),
): StillView[] {
  const { framing, reach } = outlook;
  const { eye, look } = lookingFrom(spot, paths, outlook, instant, lines);
  return paths.map((path) => {
    view.look(path.samples, eye, framing, look(path).sight);
    return stillView(view, framing, reach, outlook.skyAt);
  });
}

/** `stillViewsOf` a spot of the survey, computed only when something has changed for it; `each`: how many are kept a spot. */
function viewsKept(each: number) {
  const kept = new Memo<StillView[]>({ each });
  return (
    spot: StandingSpot,
    paths: readonly Path[],
    contents: Contents,
    instant: number,
    terrain: ElevationGrid | null,
    scratch: Scratch = new Scratch(),
  ): StillView[] => {
    const outlook = outlookOf(contents, terrain);
    const { around, timeZone } = outlook;
    // Leaves go by the month; without any all instants are alike.
    const at = around?.leafy ? withinMonth(monthAt(instant, timeZone)) : 0;
    kept.keepOnly(contents.spots);
    return kept.get([spot, paths, outlook, at], () => stillViewsOf(spot, paths, outlook, at, scratch));
  };
}

/** Of the subject at hand. */
export const keptViews = viewsKept(2);
/** Of the types of a programme, which take turns: they put nothing of the subject at hand out. */
export const keptViewsOfTypes: typeof keptViews = viewsKept(12);

/** One path from a spot in each of the twelve months: the same twelve times where no leaves come and go. */
export function viewsByMonth(
  spot: StandingSpot,
  path: Path,
  outlook: Outlook,
  scratch: Scratch = new Scratch(),
): StillView[] {
  const of = (month: number) =>
    stillViewsOf(spot, [path], outlook, withinMonth(month), scratch)[0] as StillView;
  const months = Array.from({ length: 12 }, (_, i) => i + 1);
  if (outlook.around?.leafy) return months.map(of);
  const one = of(1);
  return months.map(() => one);
}

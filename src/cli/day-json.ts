import { sunTimes } from '../figures/light/sun-times';
import { momentsOf } from '../figures/light/moments';
import type { ElevationGrid } from '../figures/sight/terrain';
import { outlookOf } from '../figures/outlook';
import { stillViewsOf } from '../figures/when/still-views';
import { everyPath } from '../figures/traffic/every-path';
import { lightStretches } from '../figures/when/day-windows';
import type { Contents } from '../survey/contents';
import { dayOf, isoInstant, wholeSecond } from '../time/local-time';
import type { Told } from './progress';

/**
 * The light of a civil day ("2026-06-21" at the airfield) in the form in which the `figures` command prints it. Every
 * instant is the first whole second at which what it tells is so: `--at` that instant says the same, or that a picture hardly better has
 * another light (`lightStretches`).
 */
export function dayJson(
  contents: Contents,
  date: string,
  terrain: ElevationGrid | null,
  told: Told = () => undefined,
) {
  const { timeZone } = momentsOf(contents, 0);
  const { from, to } = dayOf(date, timeZone);
  const times = sunTimes(contents.site.reference, from, to);
  const iso = (instant: number | null) => (instant === null ? null : isoInstant(wholeSecond(instant, to)));
  const paths = everyPath(contents, () => true, terrain);
  const outlook = outlookOf(contents, terrain);
  return {
    civilDawn: iso(times.civilDawn),
    sunrise: iso(times.sunrise),
    sunset: iso(times.sunset),
    civilDusk: iso(times.civilDusk),
    sunUp: times.sunUp,
    windows: contents.spots.flatMap((spot, done) => {
      told(done, contents.spots.length, 'spots through the day');
      return stillViewsOf(spot, paths, outlook, from).flatMap((view, i) =>
        lightStretches(view, spot.position, from, to).map((stretch) => ({
          spot: spot.id,
          path: paths[i]?.ref.path,
          light: stretch.value,
          from: isoInstant(stretch.from),
          to: isoInstant(stretch.to),
        })),
      );
    }),
  };
}

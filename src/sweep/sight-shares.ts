import type { Contents } from '../survey/contents';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import { along, frameAt, mapped } from '../figures/geometry/earth';
import { outlookOf } from '../figures/outlook';
import { PathInView } from '../figures/path-in-view';
import { groundAt } from '../figures/sight/ground';
import { seasons } from '../figures/sight/spot-sight';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Path } from '../figures/traffic/paths';
import { cellPosition, type Area } from './area';
import { LazySight } from './lazy-sight';

/**
 * Cell by cell the largest share of a path's samples within the kit's reach that is in sight, of all paths, as
 * `visibleShare` has it for a standing spot; NaN where no path is in reach.
 */
export function sightShares(
  contents: Contents,
  paths: readonly Path[],
  area: Area,
  terrain: ElevationGrid | null,
  instant: number,
): Float64Array {
  const { framing, around, runways, fieldElevation, timeZone, reach } = outlookOf(contents, terrain);
  const sight = around && new LazySight(around, paths, framing);
  const does = around ? seasons(around, timeZone, [instant])[0]?.does : undefined;
  const view = new PathInView();
  return Float64Array.from({ length: area.count ** 2 }, (_, index) => {
    const position = cellPosition(area, index);
    const ground = groundAt(position, runways, fieldElevation, around?.terrain ?? null).elevation;
    const eye = ground + standingEyeHeight;
    const frame = frameAt(position);
    if (sight && around && does) sight.stand(does, ...mapped(around.frame, position), eye);
    let most = NaN;
    paths.forEach((path, p) => {
      view.look(path.samples, { frame, point: along(frame.origin, frame.up, eye) }, framing);
      let [usable, visible] = [0, 0];
      for (let i = 0; i < view.count; i++) {
        if (!(view.focalAt(i) <= reach.usableTo)) continue;
        const share = path.samples.share[i] as number;
        usable += share;
        visible += share * (sight ? sight.at(p, i) : 1);
      }
      if (usable > 0 && !(visible / usable <= most)) most = visible / usable;
    });
    return most;
  });
}

import type { Contents } from '../survey/contents';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import { along, frameAt, mapped } from '../figures/geometry/earth';
import { PathInView } from '../figures/path-in-view';
import { seasons } from '../figures/sight/spot-sight';
import type { ElevationGrid } from '../figures/sight/terrain';
import { cellPosition } from './area';
import { LazySight } from './lazy-sight';
import type { SweepPlan } from './plan';
import { bestInstant, Sweep } from './sweep';

/**
 * Cell by cell what share of its best path's samples within the kit's reach is in sight at its best instant, as
 * `visibleShare` has it for a standing spot there; NaN where nothing has any worth.
 */
export function sightShares(
  contents: Contents,
  plan: SweepPlan,
  terrain: ElevationGrid | null,
): Float64Array {
  const { area, paths, instants } = plan;
  const sweep = new Sweep(contents, plan, terrain);
  const { framing, around, timeZone, reach } = sweep.outlook;
  const sight = around && new LazySight(around, paths, framing);
  const groups = around ? seasons(around, timeZone, instants) : [];
  const view = new PathInView();
  return Float64Array.from({ length: area.count ** 2 }, (_, index) => {
    const position = cellPosition(area, index);
    const kernel = sweep.lookFrom(position);
    const best = bestInstant(kernel.worth);
    const p = sweep.bestPath(position);
    const path = paths[p];
    if (!path) return NaN;
    const eye = sweep.groundUnder(position).elevation + standingEyeHeight;
    const frame = frameAt(position);
    const season = groups.find((group) => group.instants.includes(best));
    if (sight && around && season) sight.stand(season.does, ...mapped(around.frame, position), eye);
    view.look(path.samples, { frame, point: along(frame.origin, frame.up, eye) }, framing);
    let [usable, visible] = [0, 0];
    for (let i = 0; i < view.count; i++) {
      if (!(view.focalAt(i) <= reach.usableTo)) continue;
      const share = path.samples.share[i] as number;
      usable += share;
      visible += share * (sight ? sight.at(p, i) : 1);
    }
    return usable > 0 ? visible / usable : NaN;
  });
}

import { groundLine } from '../../figures/geometry/earth';
import { grounded } from '../../figures/sight/grounded';
import type { ElevationGrid } from '../../figures/sight/terrain';
import { fieldElevation } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { RAD } from '../../survey/angles';

/** Rise over run of a path of 3 degrees, and m of its wheels above its last waypoint: as over a threshold. */
const glide = Math.tan(3 * RAD);
const crossing = 15.24;

/**
 * Heights to begin with for waypoints that were clicked, in m above mean sea level of the wheels: those of an
 * approach that ends over a threshold at the last of them. `terrain`: what a field without a stated height lies on. The user
 * types what is published.
 */
export function heightsToThreshold(
  points: readonly Position[],
  contents: Pick<Contents, 'site' | 'runways'>,
  terrain: ElevationGrid | null,
): number[] {
  let way = 0;
  const threshold = fieldElevation(grounded(contents, terrain)) + crossing;
  const heights = [threshold];
  for (let i = points.length - 1; i > 0; i--) {
    way += groundLine(points[i - 1] as Position, points[i] as Position).distance;
    heights.unshift(Math.round(threshold + glide * way));
  }
  return heights;
}

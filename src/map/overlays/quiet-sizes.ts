import { RAD } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';
import { degreesPerPixel } from '../screen';
import { quietRings, ringsOf, ringsReach, selectedRings, type RingChoice, type RingSize } from './rings';
import type { SpotScene } from './scene';

/** Rings are sectors, not full circles: two may come this near to each other, as a share of what they reach together. */
const room = 0.8;

/**
 * How large the rings of each quiet spot are drawn: the largest size that leaves its neighbours their room on screen at
 * this zoom; null where even the finest would lie over theirs, as with all of a field in a few pixels.
 */
export function quietSizes(
  quiet: readonly SpotScene[],
  selected: SpotScene | null,
  rings: RingChoice,
  zoom: number,
): readonly (RingSize | null)[] {
  const counts = quiet.map(({ a }) => ringsOf(a, rings).length);
  const ofSelected = selected ? ringsReach(ringsOf(selected.a, rings).length, selectedRings) : 0;
  return quiet.map(({ spot }, i) => {
    const nearest = quiet.reduce(
      (least, other, k) =>
        k === i ? least : Math.min(least, pixelsApart(spot.position, other.spot.position, zoom)),
      Infinity,
    );
    const toSelected = selected ? pixelsApart(spot.position, selected.spot.position, zoom) : Infinity;
    const fits = (size: RingSize) => {
      const reach = ringsReach(counts[i] as number, size);
      return nearest >= room * 2 * reach && toSelected >= room * (reach + ofSelected);
    };
    return quietRings.find(fits) ?? null;
  });
}

/** Pixels between two places of one field. */
function pixelsApart(one: Position, other: Position, zoom: number): number {
  const perPixel = degreesPerPixel(zoom);
  const east = (one[0] - other[0]) / perPixel;
  const north = (one[1] - other[1]) / (perPixel * Math.cos(one[1] * RAD));
  return Math.hypot(east, north);
}

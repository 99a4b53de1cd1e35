import { RAD, wrap360 } from '../../figures/geometry/angles';
import type { SpotFigures } from '../../figures/types';
import type { Position } from '../../survey/document';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { point, type OverlayFeature } from './features';
import { labelOf } from './label';
import { ringsReach, type RingSize } from './rings';

/** What rings a spot is drawn with: which paths' (their indices), and how large; without any where there is no room. */
export interface DrawnRings {
  readonly paths: readonly number[];
  readonly size: RingSize | null;
}

/**
 * The mark of a spot, crossed out where nobody may stand on the day, and its name on the sides where the rings leave room.
 * `middle`: of the field.
 */
export function spotFeature(
  spot: StandingSpot,
  a: SpotFigures,
  part: 'spot' | 'selected-spot',
  rings: DrawnRings,
  forbidden: boolean,
  middle: Position,
): OverlayFeature {
  const covered = rings.size ? coveredTens(a, rings.paths) : [];
  const sidesToTry =
    rings.size && covered.includes(true)
      ? besideRings(covered, ringsReach(rings.paths.length, rings.size))
      : outward(spot.position, middle);
  return point(spot.position, {
    part,
    id: spot.id,
    label: labelOf(spot.name),
    forbidden,
    // In em, of the text's 12 pixels.
    places: sidesToTry.flatMap(({ anchor, right, down, pixels }) => [
      anchor,
      [(right * pixels) / 12, (down * pixels) / 12],
    ]),
  });
}

interface Side {
  readonly bearing: number;
  /** Which of its own sides the name turns to the mark. */
  readonly anchor: 'left' | 'right' | 'top' | 'bottom';
  readonly right: number;
  readonly down: number;
}
const side = {
  right: { bearing: 90, anchor: 'left', right: 1, down: 0 },
  left: { bearing: 270, anchor: 'right', right: -1, down: 0 },
  below: { bearing: 180, anchor: 'top', right: 0, down: 1 },
  above: { bearing: 0, anchor: 'bottom', right: 0, down: -1 },
} as const satisfies Readonly<Record<string, Side>>;

/** Degrees to each side that a name needs free of rings. */
const needed = 40;
/** Pixels from the mark to its name. */
const close = 13;

/** Where a name may stand, `pixels` from the mark. */
type LabelPlace = Side & { readonly pixels: number };

/**
 * Without rings names stand over spots north of the field and under those south of it: off the runways. Else the other way
 * round, or towards the field; never away from it to the side, where a phone's map ends.
 */
function outward([lng, lat]: Position, middle: Position): readonly LabelPlace[] {
  const { above, below, left, right } = side;
  const upright = lat > middle[1] ? [above, below] : [below, above];
  return [...upright, lng > middle[0] ? left : right].map((to) => ({ ...to, pixels: close }));
}

function besideRings(covered: readonly boolean[], reach: number): readonly LabelPlace[] {
  const free = Object.values(side).filter(({ bearing }) => !anyWithin(covered, bearing, needed));
  const away = wrap360(meanBearing(covered) + 180);
  const turned = (bearing: number) => Math.cos((bearing - away) * RAD);
  if (free.length === 0) return [{ ...side.below, pixels: reach + 3 }];
  return free.sort((x, y) => turned(y.bearing) - turned(x.bearing)).map((to) => ({ ...to, pixels: close }));
}

/** Which tens of degrees round a spot lie in a view sector that is drawn. */
function coveredTens(figures: SpotFigures, paths: readonly number[]): boolean[] {
  const covered = new Array<boolean>(36).fill(false);
  for (const i of paths)
    for (const { bearings } of figures.paths[i]?.sector.runs ?? [])
      for (const bearing of bearings) covered[Math.floor(bearing / 10) % 36] = true;
  return covered;
}

const anyWithin = (covered: readonly boolean[], bearing: number, apart: number) =>
  covered.some((c, i) => c && Math.cos((i * 10 + 5 - bearing) * RAD) > Math.cos(apart * RAD));

function meanBearing(covered: readonly boolean[]): number {
  let [east, north] = [0, 0];
  covered.forEach((c, i) => {
    if (!c) return;
    east += Math.sin((i * 10 + 5) * RAD);
    north += Math.cos((i * 10 + 5) * RAD);
  });
  return Math.atan2(east, north) / RAD;
}

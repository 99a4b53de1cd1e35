import { RAD, wrap360 } from '../../figures/geometry/angles';
import type { SpotFigures } from '../../figures/types';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { point, type OverlayFeature } from './features';
import { labelOf } from './label';
import { ringsReach, type RingSize } from './rings';

/** What rings a spot is drawn with: which paths' (their indices), and how large; without any where there is no room. */
export interface DrawnRings {
  readonly paths: readonly number[];
  readonly size: RingSize | null;
}

/** The mark of a spot, crossed out where nobody may stand on the day, and its name on the side where the rings leave room. */
export function spotFeature(
  spot: StandingSpot,
  a: SpotFigures,
  part: 'spot' | 'selected-spot',
  rings: DrawnRings,
  forbidden: boolean,
): OverlayFeature {
  const { anchor, pixels } = labelPlace(a, rings);
  return point(spot.position, {
    part,
    id: spot.id,
    label: labelOf(spot.name),
    forbidden,
    anchor,
    // In the text's own size, 12 pixels.
    offset: pixels / 12,
  });
}

const sides = [
  { bearing: 90, anchor: 'left' },
  { bearing: 270, anchor: 'right' },
  { bearing: 180, anchor: 'top' },
  { bearing: 0, anchor: 'bottom' },
] as const;

/** Degrees to each side that a name needs free of rings. */
const needed = 40;

interface LabelPlace {
  /** Which of its own sides the name turns to the mark. */
  readonly anchor: string;
  /** Pixels from the mark. */
  readonly pixels: number;
}

function labelPlace(figures: SpotFigures, { paths, size }: DrawnRings): LabelPlace {
  if (!size) return { anchor: 'left', pixels: 13 };
  const covered = coveredTens(figures, paths);
  const free = sides.filter(({ bearing }) => !anyWithin(covered, bearing, needed));
  const away = wrap360(meanBearing(covered) + 180);
  const turned = (bearing: number) => Math.cos((bearing - away) * RAD);
  const best = [...free].sort((x, y) => turned(y.bearing) - turned(x.bearing))[0];
  if (best) return { anchor: best.anchor, pixels: 13 };
  return { anchor: 'top', pixels: ringsReach(paths.length, size) + 3 };
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

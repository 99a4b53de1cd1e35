import type { PathSamples } from '../traffic/samples';
import type { HiddenStretch } from '../types';
import { byNothing, byTerrain, type SightLines } from './sight-lines';
import type { Surroundings } from './surroundings';

/** What hides, as figures print it: an obstacle's id or "terrain"; null for nothing. */
export function nameOf({ obstacles }: Surroundings, by: number): string | null {
  if (by === byNothing) return null;
  return by === byTerrain ? 'terrain' : (obstacles[by]?.id ?? null);
}

/**
 * The stretches of a path on which the aircraft is hidden, one for each thing that hides it: stations of the first and
 * the last hidden sample in the order of flight. `sight`: as it is after looking along the path.
 */
function hiddenStretches(
  stations: Float64Array,
  sight: Pick<SightLines, 'hiddenBy'>,
  around: Surroundings,
): HiddenStretch[] {
  const stretches: HiddenStretch[] = [];
  let from = 0;
  for (let i = 1; i <= stations.length; i++) {
    const by = sight.hiddenBy[from] as number;
    if (i < stations.length && sight.hiddenBy[i] === by) continue;
    const name = nameOf(around, by);
    if (name !== null)
      stretches.push({
        from: stations[from] as number,
        to: stations[i - 1] as number,
        by: name,
        first: from,
        last: i - 1,
      });
    from = i;
  }
  return stretches;
}

/** What is in the way along one path, as figures need it. */
export interface InTheWay {
  readonly stretches: readonly HiddenStretch[];
  /** Id of the first obstacle, or "terrain", where sample `i` is hidden. */
  byAt(i: number): string | null;
  /** Id of the mesh that sample `i` is seen through. */
  throughAt(i: number): string | null;
}

export const openGround: InTheWay = { stretches: [], byAt: () => null, throughAt: () => null };

/** After looking along a path; the answers for single samples hold until the next look. */
export const inTheWay = (
  { station }: Pick<PathSamples, 'station'>,
  sight: Pick<SightLines, 'hiddenBy' | 'through'>,
  around: Surroundings,
): InTheWay => ({
  stretches: hiddenStretches(station, sight, around),
  byAt: (i) => nameOf(around, sight.hiddenBy[i] as number),
  throughAt: (i) => nameOf(around, sight.through[i] as number),
});

import type { PathInView } from '../path-in-view';
import type { InTheWay } from '../sight/hidden';
import type { Path } from '../traffic/paths';
import type { SectorRun } from '../types';
import { bearingAt } from './sample-at';
import type { Runs } from './usable-runs';

/** What of a path the kit can use, and what of that is in sight: whatever the sun does. */
export interface PartInSight {
  readonly runs: Runs;
  readonly inSight: readonly Pick<SectorRun, 'from' | 'bearings' | 'focalLengths'>[];
  /** What the usable samples stand for, added up: m, or s of a circuit (`share`). */
  readonly usable: number;
  /** Share of it that is in sight; null when nothing is usable. */
  readonly visibleShare: number | null;
  /** Ids of the meshes that it is seen through. */
  readonly through: readonly string[];
}

/** As `view` shows a path now. */
export function partInSight(view: PathInView, { samples }: Path, runs: Runs, way: InTheWay): PartInSight {
  const inSight: PartInSight['inSight'][number][] = [];
  const through: string[] = [];
  let usable = 0;
  let visible = 0;
  for (const [from, to] of runs)
    for (let i = from; i <= to;) {
      const begun = i;
      for (; i <= to && view.sightAt(i) > 0; i++) {
        usable += samples.share[i] as number;
        visible += view.sightAt(i) * (samples.share[i] as number);
        const mesh = way.throughAt(i);
        if (mesh !== null && !through.includes(mesh)) through.push(mesh);
      }
      if (i > begun) inSight.push(runFrom(view, begun, i));
      for (; i <= to && view.sightAt(i) === 0; i++) usable += samples.share[i] as number;
    }
  return { runs, inSight, usable, visibleShare: usable > 0 ? visible / usable : null, through };
}

function runFrom(view: PathInView, from: number, to: number): PartInSight['inSight'][number] {
  const bearings = new Array<number>(to - from);
  const focalLengths = new Array<number>(to - from);
  for (let i = from; i < to; i++) {
    bearings[i - from] = bearingAt(view, i);
    focalLengths[i - from] = view.focalAt(i);
  }
  return { from, bearings, focalLengths };
}

import type { Reach } from '../optics/reach';
import type { PathInView } from '../path-in-view';

/** First and last index of each run of neighbouring usable samples. */
export type Runs = readonly (readonly [from: number, to: number])[];

export function usableRuns(view: PathInView, reach: Reach): Runs {
  const runs: [number, number][] = [];
  for (let i = 0; i < view.count; i++) {
    if ((view.leastFocal[i] as number) > reach.usableTo || !(view.focalAt(i) <= reach.usableTo)) continue;
    const last = runs[runs.length - 1];
    if (last && last[1] === i - 1) last[1] = i;
    else runs.push([i, i]);
  }
  return runs;
}

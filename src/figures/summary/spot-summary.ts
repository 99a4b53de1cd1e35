import type { Kit } from '../../survey/schema/kit';
import { lossOf, lossRounding } from '../optics/lens-fit';
import type { PathFromSpot, PathRef, Sample, SpotFigures, Verdict } from '../types';

/** One path from a spot at both moments. */
export interface PathSummary {
  readonly ref: PathRef;
  readonly a: PathFromSpot;
  readonly b: PathFromSpot;
  /** Needed focal lengths in mm along the usable part; null when nothing of the path is usable from here. */
  readonly focalRange: { readonly shortest: number; readonly longest: number } | null;
}

/** A spot's paths in the survey's order, and the one to wait at. */
export interface SpotSummary {
  readonly paths: readonly PathSummary[];
  /** The path with the best headline at moment A, worth waiting for or not; null when none is within reach. */
  readonly leading: PathSummary | null;
}

/**
 * What a spot is good for, out of its figures at two moments (the same spot, the same paths). `passedOver`: paths that lead
 * nowhere now, such as recorded flights to an end that is not in use.
 */
export function spotSummary(a: SpotFigures, b: SpotFigures, passedOver?: ReadonlySet<string>): SpotSummary {
  const paths = a.paths.map((path, i) => {
    const other = b.paths[i];
    if (other?.ref.path !== path.ref.path)
      throw new Error(`expected ${path.ref.path} at both moments, got ${other?.ref.path ?? 'nothing'}`);
    return { ref: path.ref, a: path, b: other, focalRange: focalRangeOf(path) };
  });
  return { paths, leading: paths[leadingIndex(a.paths, passedOver)] ?? null };
}

function focalRangeOf({ sector }: PathFromSpot): PathSummary['focalRange'] {
  const needed = sector.runs.flatMap((run) => run.focalLengths);
  return needed.length > 0 ? { shortest: Math.min(...needed), longest: Math.max(...needed) } : null;
}

/** What a path leads with: its pass, or where it has none its best sample. */
export const headlineOf = ({ pass, best }: Pick<PathFromSpot, 'pass' | 'best'>): Sample => pass ?? best;

/** A better picture than the pass elsewhere on the path; null where the pass is the best or there is none. */
export const betterElsewhere = ({ pass, best }: Pick<PathFromSpot, 'pass' | 'best'>): Sample | null =>
  pass && best.score.total > pass.score.total && best.station !== pass.station ? best : null;

/**
 * Which of a spot's paths to wait at, -1 where none is within reach: by the score of the headline, at night (all equal)
 * by the least slant range, as the headline itself. `passedOver` (PathRef.path) never leads.
 */
export function leadingIndex(paths: readonly PathFromSpot[], passedOver?: ReadonlySet<string>): number {
  let leading = -1;
  paths.forEach((path, i) => {
    if (path.sector.runs.length === 0 || passedOver?.has(path.ref.path)) return;
    const best = paths[leading];
    if (!best || isBetter(headlineOf(path), headlineOf(best))) leading = i;
  });
  return leading;
}

const isBetter = (one: Sample, other: Sample): boolean =>
  one.score.total === other.score.total
    ? one.slantRange < other.slantRange
    : one.score.total > other.score.total;

/** The lens to take: that of the least loss (`lossOf`), the first of the kit where several are alike. */
export function lensToTake(verdicts: readonly Verdict[], fill: Kit['fill']): Verdict | null {
  let best: Verdict | null = null;
  const loss = ({ extender, fillAt }: Verdict) => lossOf(extender, fillAt, fill);
  for (const verdict of verdicts) if (!best || loss(verdict) < loss(best) - lossRounding) best = verdict;
  return best;
}

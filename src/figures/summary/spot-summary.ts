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
  /** The path with the best picture at moment A; null when none is within reach. */
  readonly leading: PathSummary | null;
}

/** What a spot is good for, out of its figures at two moments (the same spot, the same paths). */
export function spotSummary(a: SpotFigures, b: SpotFigures): SpotSummary {
  const paths = a.paths.map((path, i) => {
    const other = b.paths[i];
    if (other?.ref.path !== path.ref.path)
      throw new Error(`expected ${path.ref.path} at both moments, got ${other?.ref.path ?? 'nothing'}`);
    return { ref: path.ref, a: path, b: other, focalRange: focalRangeOf(path) };
  });
  return { paths, leading: leadingOf(paths) };
}

function focalRangeOf({ sector }: PathFromSpot): PathSummary['focalRange'] {
  const needed = sector.runs.flatMap((run) => run.focalLengths);
  return needed.length > 0 ? { shortest: Math.min(...needed), longest: Math.max(...needed) } : null;
}

/** By the score of the best point, at night (all equal) by the least slant range, as the best point itself. */
function leadingOf(paths: readonly PathSummary[]): PathSummary | null {
  let leading: PathSummary | null = null;
  for (const path of paths) {
    if (!path.focalRange) continue;
    if (!leading || isBetter(path.a.best, leading.a.best)) leading = path;
  }
  return leading;
}

const isBetter = (one: Sample, other: Sample): boolean =>
  one.score.total === other.score.total
    ? one.slantRange < other.slantRange
    : one.score.total > other.score.total;

/** The lens to take: one that fits (rather without extender), else the one that loses least to cropping or cutting off. */
export function lensToTake(verdicts: readonly Verdict[]): Verdict | null {
  let best: Verdict | null = null;
  for (const verdict of verdicts) if (!best || isLess(losses(verdict), losses(best))) best = verdict;
  return best;
}

/** Whether it fits, whether it takes an extender, and the share that is lost: in this order. */
function losses(verdict: Verdict): readonly [number, number] {
  switch (verdict.verdict) {
    case 'fits':
      return [verdict.extender === null ? 0 : 1, 0];
    case 'too-short':
      return [2, 1 - verdict.crop];
    case 'too-long':
      return [2, verdict.cutOff];
  }
}

const isLess = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  a[0] === b[0] ? a[1] < b[1] : a[0] < b[0];

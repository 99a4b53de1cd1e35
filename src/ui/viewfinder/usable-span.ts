import type { PathFromSpot } from '../../figures/types';

/** Indices of a path's samples, both included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * What of a path the kit can use and is in sight, from its first sample to its last: the whole path of `count` samples
 * where nothing is.
 */
export function usableSpan(seen: Pick<PathFromSpot, 'sector'> | undefined, count: number): Span {
  const runs = seen?.sector.runs ?? [];
  const [first, last] = [runs[0], runs[runs.length - 1]];
  if (!first || !last) return { from: 0, to: Math.max(0, count - 1) };
  return { from: first.from, to: last.from + last.bearings.length - 1 };
}

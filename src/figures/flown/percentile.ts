/**
 * A percentile by linear interpolation between order statistics (Hyndman and Fan 1996, "Sample Quantiles in Statistical
 * Packages", definition 7: what spreadsheets call PERCENTILE.INC). `sorted`: ascending, at least one; `share` 0 to 1.
 */
export function percentile(sorted: readonly number[] | Float64Array, share: number): number {
  const at = (sorted.length - 1) * share;
  const below = Math.floor(at);
  const low = sorted[below] as number;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return low + (high - low) * (at - below);
}

/** Median and quartiles of a list in any order. */
export interface Spread {
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** Null for an empty list. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const sorted = Float64Array.from(values).sort();
  return { median: percentile(sorted, 0.5), low: percentile(sorted, 0.25), high: percentile(sorted, 0.75) };
}

import { percentile } from './percentile';

export interface FittedLine {
  readonly slope: number;
  readonly intercept: number;
}

/** Points beyond which only every so many are used: of 60 there are 1,770 pairs, and more tell nothing new. */
const mostPoints = 60;

/**
 * A straight line that up to 29 % of wild points cannot move: its slope is the median of the slopes between all
 * pairs of points, its intercept the median of what is left (Theil 1950, Sen 1968). Null with fewer than two
 * different `x`.
 */
export function theilSen(x: readonly number[], y: readonly number[]): FittedLine | null {
  const step = Math.max(1, Math.ceil(x.length / mostPoints));
  const used = Array.from({ length: Math.ceil(x.length / step) }, (_, i) => i * step);
  const slopes = new Float64Array((used.length * (used.length - 1)) / 2);
  let count = 0;
  for (let i = 0; i < used.length; i++)
    for (let j = i + 1; j < used.length; j++) {
      const [p, q] = [used[i] as number, used[j] as number];
      const dx = (x[q] as number) - (x[p] as number);
      if (dx !== 0) slopes[count++] = ((y[q] as number) - (y[p] as number)) / dx;
    }
  if (count === 0) return null;
  const slope = percentile(slopes.subarray(0, count).sort(), 0.5);
  const rest = Float64Array.from(used, (i) => (y[i] as number) - slope * (x[i] as number)).sort();
  return { slope, intercept: percentile(rest, 0.5) };
}

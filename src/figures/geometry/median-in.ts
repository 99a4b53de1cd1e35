/**
 * The median of a list, which is left in another order; NaN for none. The middle is found without sorting the rest (Hoare
 * 1961, algorithm 65, "Find"): speeds of a track take a median of hundreds of slopes for every leg.
 */
export function medianIn(values: Float64Array): number {
  if (values.length === 0) return NaN;
  const half = values.length >> 1;
  find(values, half);
  const upper = values[half] as number;
  if (values.length % 2 === 1) return upper;
  let lower = -Infinity;
  for (let i = 0; i < half; i++) lower = Math.max(lower, values[i] as number);
  return (lower + upper) / 2;
}

/** Brings the value that a sorted list has at `k` there, none larger before it and none smaller behind. */
function find(values: Float64Array, k: number): void {
  let left = 0;
  let right = values.length - 1;
  while (left < right) {
    const pivot = values[k] as number;
    let i = left;
    let j = right;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while (pivot < (values[j] as number)) j--;
      if (i > j) break;
      const low = values[i] as number;
      values[i++] = values[j] as number;
      values[j--] = low;
    }
    if (j < k) left = i;
    if (k < i) right = j;
  }
}

import { bisect } from './sun-times';

/** A stretch of time over which something stays as it is. Instants, ms since 1970, UTC. */
export interface Stretch<T> {
  readonly from: number;
  readonly to: number;
  readonly value: T;
}

/** Short enough for the quickest change of light of a day: none lasts under five minutes outside the polar circles. */
const stepMs = 300_000;

/** Cuts the time between two instants where `at` changes, in order; changes are found to half a second. */
export function stretches<T extends string | null>(
  at: (instant: number) => T,
  from: number,
  to: number,
): Stretch<T>[] {
  const out: Stretch<T>[] = [];
  let begun = from;
  let value = at(from);
  for (let t = from; t < to; t += stepMs) {
    const next = Math.min(t + stepMs, to);
    const after = at(next);
    if (after === value) continue;
    const before = value;
    const change = bisect((x) => at(x) !== before, t, next);
    out.push({ from: begun, to: change, value });
    begun = change;
    value = after;
  }
  return begun < to ? [...out, { from: begun, to, value }] : out;
}

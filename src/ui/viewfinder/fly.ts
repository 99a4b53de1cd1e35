import type { PathSamples } from '../../figures/traffic/samples';

/** Where on a path, counted in samples, an aircraft is `seconds` after `at`, at its own speed; the end at the latest. */
export function flown({ station, speed, count }: PathSamples, at: number, seconds: number): number {
  let left = seconds;
  let here = at;
  while (here < count - 1 && left > 0) {
    const i = Math.floor(here);
    const long = Math.abs((station[i + 1] ?? 0) - (station[i] ?? 0));
    // At a standstill the take-off run would never begin.
    const fast = Math.max(2, ((speed[i] ?? 0) + (speed[i + 1] ?? 0)) / 2);
    const rest = ((i + 1 - here) * long) / fast;
    if (rest > left) return here + (left * fast) / long;
    left -= rest;
    here = i + 1;
  }
  return Math.min(here, count - 1);
}

import { moonAt } from './moon';

/** Days, by their index, on which the moon is new or full. */
export interface MoonDays {
  readonly full: readonly number[];
  readonly fresh: readonly number[];
}

/** `days`: the first instant of each day (ms since 1970), one after the other, and the end of the last. */
export function moonDays(days: readonly number[]): MoonDays {
  const full: number[] = [];
  const fresh: number[] = [];
  // The phase is the same from everywhere.
  const phases = days.map((instant) => moonAt([0, 0], instant).phase);
  for (let d = 0; d + 1 < phases.length; d++) {
    const [before, after] = [phases[d] as number, phases[d + 1] as number];
    if (after < before) fresh.push(d);
    else if (before < 0.5 && after >= 0.5) full.push(d);
  }
  return { full, fresh };
}

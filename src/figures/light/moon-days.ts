import { datePlus, dayStart } from '../../time/local-time';
import { moonAt } from './sun';

/** Days, by their index, on which the moon is new or full. */
export interface MoonDays {
  readonly full: readonly number[];
  readonly fresh: readonly number[];
}

/** New and full moons among dates one after the other ("2026-06-21"), by the clock of a zone. */
export function moonDays(dates: readonly string[], timeZone: string): MoonDays {
  const full: number[] = [];
  const fresh: number[] = [];
  const last = dates.at(-1);
  if (last === undefined) return { full, fresh };
  // The phase is the same from everywhere.
  const phases = [...dates, datePlus(last, 1)].map((date) => moonAt([0, 0], dayStart(date, timeZone)).phase);
  for (let d = 0; d + 1 < phases.length; d++) {
    const [before, after] = [phases[d] as number, phases[d + 1] as number];
    if (after < before) fresh.push(d);
    else if (before < 0.5 && after >= 0.5) full.push(d);
  }
  return { full, fresh };
}

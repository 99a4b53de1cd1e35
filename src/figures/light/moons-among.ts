import { datePlus, dayStart } from '../../time/local-time';
import { moonDays, type MoonDays } from './moon-days';

/** New and full moons among dates (`2026-06-21`) one after the other, by the airfield's clock. */
export function moonsAmong(dates: readonly string[], timeZone: string): MoonDays {
  const last = dates.at(-1);
  if (last === undefined) return { full: [], fresh: [] };
  return moonDays([...dates, datePlus(last, 1)].map((date) => dayStart(date, timeZone)));
}

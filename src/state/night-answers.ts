import { moonAt, type Moon } from '../figures/light/moon';
import { moonDays, type MoonDays } from '../figures/light/moon-days';
import { nightOf, type Night } from '../figures/light/night';
import { dayStart, datePlus } from '../time/local-time';
import type { Derived } from './derived.svelte';

type Figures = Pick<Derived, 'contents' | 'day'>;

/** How dark the day shown is, and when the moon is up. */
export const nightOfDay = ({ contents, day }: Figures): Night =>
  nightOf(contents.site.reference, day.span.from, day.span.to);

/** The moon over the airfield at an instant (ms since 1970). */
export const moonOver = ({ contents }: Pick<Figures, 'contents'>, instant: number): Moon =>
  moonAt(contents.site.reference, instant);

/** New and full moons among dates one after the other, by the airfield's clock. */
export function moonsAmong(dates: readonly string[], timeZone: string): MoonDays {
  const last = dates.at(-1);
  if (last === undefined) return { full: [], fresh: [] };
  return moonDays([...dates, datePlus(last, 1)].map((date) => dayStart(date, timeZone)));
}

export { evOfLux } from '../figures/optics/exposure';

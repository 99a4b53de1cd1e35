import type { Contents } from '../../survey/contents';
import type { SkyOfDay } from '../../survey/schema/sky';
import type { Weather } from '../../survey/schema/weather';
import { dateAt, isTimeZone } from '../../time/local-time';
import { reportedSky } from '../traffic/wind/sky-reported';
import { alwaysClear, clearSky, type SkyAt } from './sky';

/** The sky of a survey: what was typed for the day goes before what was reported; without any word it is clear. */
export function skyAtOf({ sky, weather, site }: Pick<Contents, 'sky' | 'weather' | 'site'>): SkyAt {
  return skyAt(sky, weather, isTimeZone(site.timeZone) ? site.timeZone : 'UTC');
}

let last: {
  readonly key: readonly [readonly SkyOfDay[], Weather | null, string];
  readonly answer: SkyAt;
} | null = null;

/** One and the same function as long as nothing of it has changed (the last survey's is kept): caches go by it. */
function skyAt(sky: readonly SkyOfDay[], weather: Weather | null, timeZone: string): SkyAt {
  if (sky.length === 0 && (weather?.skies.length ?? 0) === 0) return alwaysClear;
  if (last?.key[0] === sky && last.key[1] === weather && last.key[2] === timeZone) return last.answer;
  const typed = new Map(sky.map((day) => [day.date, day]));
  const answer: SkyAt = (instant) => {
    const day = typed.size > 0 ? typed.get(dateAt(instant, timeZone)) : undefined;
    return day ?? (weather && reportedSky(weather, instant)) ?? clearSky;
  };
  last = { key: [sky, weather, timeZone], answer };
  return answer;
}

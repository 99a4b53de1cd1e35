import type { Contents } from '../../survey/contents';
import { lastAnswer } from '../../survey/memo';
import type { SkyOfDay } from '../../survey/schema/sky';
import type { Weather } from '../../survey/schema/weather';
import { dateAt } from '../../time/local-time';
import { reportedSky } from '../traffic/wind/sky-reported';
import { alwaysClear, clearSky, type SkyAt } from './sky';

/** The sky of a survey: what was typed for the day goes before what was reported; without any word it is clear. */
export const skyAtOf = ({ sky, weather, site }: Pick<Contents, 'sky' | 'weather' | 'site'>): SkyAt =>
  skyAt(sky, weather, site.timeZone);

/** One and the same function as long as nothing of it has changed: caches go by it. */
const skyAt = lastAnswer((sky: readonly SkyOfDay[], weather: Weather | null, timeZone: string): SkyAt => {
  if (sky.length === 0 && (weather?.skies.length ?? 0) === 0) return alwaysClear;
  const typed = new Map(sky.map((day) => [day.date, day]));
  return (instant) => {
    const day = typed.size > 0 ? typed.get(dateAt(instant, timeZone)) : undefined;
    return day ?? (weather && reportedSky(weather, instant)) ?? clearSky;
  };
});

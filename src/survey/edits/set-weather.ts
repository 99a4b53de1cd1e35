import type { Survey } from '../document';
import { isObject, type Json } from '../json';
import type { Weather } from '../schema/weather';
import { patched } from './set-properties';

/** Members that say nothing are left out of the file. */
const stated = (object: object): Json =>
  Object.fromEntries(
    Object.entries(object as Record<string, Json>).filter(
      ([, value]) => value !== null && value !== false && !(Array.isArray(value) && value.length === 0),
    ),
  );

/** Keeps the wind that was read from what was typed or pasted, or forgets it. */
export function setWeather(survey: Survey, weather: Weather | null): Survey {
  const member = weather === null ? undefined : stated({ ...weather, winds: weather.winds.map(stated) });
  return { ...survey, sunside: patched(survey.sunside, { weather: member }) };
}

/** Whether the ends in use follow the wind. */
export function followWind(survey: Survey, follow: boolean): Survey {
  const weather = survey.sunside['weather'];
  if (!isObject(weather)) return survey;
  const changed = patched(weather, { follow: follow || undefined });
  return { ...survey, sunside: patched(survey.sunside, { weather: changed }) };
}

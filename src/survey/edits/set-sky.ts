import type { Survey } from '../document';
import { isObject, type Json } from '../json';
import type { SkyOfDay } from '../schema/sky';
import { patched } from './set-properties';

/** Says what the sky of a date is like, or forgets it. The days stay in order; what stands there and cannot be read stays. */
export function setSky(survey: Survey, date: string, sky: Omit<SkyOfDay, 'date'> | null): Survey {
  const given = survey.sunside['sky'];
  const list = Array.isArray(given) ? (given as readonly Json[]) : [];
  const dateOf = (entry: Json): Json | undefined => (isObject(entry) ? entry['date'] : undefined);
  const others = list.filter((entry) => dateOf(entry) !== date);
  const after = others.findIndex((entry) => {
    const day = dateOf(entry);
    return typeof day === 'string' && day > date;
  });
  const days =
    sky === null ? others : others.toSpliced(after < 0 ? others.length : after, 0, { date, ...sky });
  return { ...survey, sunside: patched(survey.sunside, { sky: days.length > 0 ? days : undefined }) };
}

import * as v from 'valibot';

import { isObject, shown } from '../json';
import { numberField, readFields, type Read } from '../fields';
import { date } from './when';

/** Direct-sun share, 0 to 1, and visibility in m of a day, as somebody typed them. */
const skyFields = {
  direct: numberField(0, 1, 1),
  visibility: numberField(50, 100_000, 10_000),
};
export interface SkyOfDay extends Read<typeof skyFields> {
  /** A date at the airfield, "2026-06-21"; each is there once. */
  readonly date: string;
}

/** Ten years of days. */
const mostDays = 3660;

/** What was typed of the sky, day by day. An entry without a date that exists is set aside with its place. */
export function readSky(
  value: unknown,
  doubt: (reason: string) => void,
  aside: (reason: string) => void,
): readonly SkyOfDay[] {
  if (value === undefined || value === null) return [];
  if (!Array.isArray(value)) {
    aside(`sunside.sky: expected a list of {date, direct, visibility}, got ${shown(value)}`);
    return [];
  }
  if (value.length > mostDays) aside(`sunside.sky: ${value.length} days; the first ${mostDays} are read`);
  const seen = new Set<string>();
  return (value as readonly unknown[]).slice(0, mostDays).flatMap((given, i): SkyOfDay[] => {
    const stated: unknown = isObject(given) ? given['date'] : undefined;
    const day = v.safeParse(date, stated);
    if (!day.success) {
      aside(`sunside.sky.${i}.date: ${day.issues[0].message}, got ${shown(stated)}`);
      return [];
    }
    if (seen.has(day.output)) {
      aside(`sunside.sky.${i}.date: ${day.output} is there already; the first one is used`);
      return [];
    }
    seen.add(day.output);
    return [{ date: day.output, ...readFields(skyFields, given, `sunside.sky.${i}`, doubt) }];
  });
}

import geomagnetism from 'geomagnetism';
import type { Position } from '../../survey/document';
import { DEG } from './angles';

const dayMs = 86_400_000;
/** Years for which the World Magnetic Models that the library carries (2015, 2020, 2025) were made. */
const modelFrom = Date.UTC(2015, 0, 1);
const modelTo = Date.UTC(2030, 0, 1);
/** The library answers up to here without a word on the console, some weeks less than the model is good for. */
const libraryTo = Date.UTC(2029, 10, 12);
const yearMs = 365 * dayMs;

type Model = ReturnType<typeof geomagnetism.model>;
let current: { day: number; model: Model } | null = null;

/** The field changes by some hundredths of a degree a month, so one model a day serves. */
function modelAt(instant: number): Model {
  const day = Math.floor(instant / dayMs);
  if (current?.day !== day) current = { day, model: geomagnetism.model(new Date(day * dayMs)) };
  return current.model;
}

let last: readonly [yearBefore: Model, last: Model] | null = null;

/** Declination in degrees in the model's last weeks. A model's field is linear in time: two days of it tell the rest. */
function declinationAfter(place: readonly [number, number, number], instant: number): number {
  last ??= [geomagnetism.model(new Date(libraryTo - yearMs)), geomagnetism.model(new Date(libraryTo))];
  const [before, then] = [last[0].point([...place]), last[1].point([...place])];
  const years = (instant - libraryTo) / yearMs;
  const north = then.x + (then.x - before.x) * years;
  const east = then.y + (then.y - before.y) * years;
  return Math.atan2(east, north) * DEG;
}

/** Whether an instant lies in years that a World Magnetic Model was made for. */
export const hasMagneticModel = (instant: number) => instant >= modelFrom && instant < modelTo;

/**
 * Magnetic declination in degrees, east positive, by the World Magnetic Model (NOAA/NCEI and BGS). Years without a model
 * take the nearest day that has one: `problemsOf` says so. `elevation`: m above mean sea level. The model is good to
 * about half a degree; near the magnetic poles it is not.
 */
export function declination([lng, lat]: Position, elevation: number, instant: number): number {
  const place = [lat, lng, elevation / 1000] as const;
  const within = Math.max(modelFrom, Math.min(modelTo - 1, instant));
  return within < libraryTo ? modelAt(within).point([...place]).decl : declinationAfter(place, within);
}

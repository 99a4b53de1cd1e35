import type { Survey } from '../document';
import { isObject, type Json } from '../json';
import type { EndRef, MomentRule } from '../schema/site';
import { patched, type Patch } from './set-properties';

function setMember(survey: Survey, key: string, patch: Patch): Survey {
  const old = survey.sunside[key];
  return { ...survey, sunside: { ...survey.sunside, [key]: patched(isObject(old) ? old : {}, patch) } };
}

/** Sets what the survey says of its airfield: name, elevation, time zone, frequencies ... */
export const setSite = (survey: Survey, patch: Patch): Survey => setMember(survey, 'site', patch);

/** Sets the date or the two times of day at the airfield. A time that was typed no longer follows the sun. */
export const setMoments = (survey: Survey, patch: { date?: string; a?: string; b?: string }): Survey =>
  setMember(survey, 'moments', {
    ...patch,
    ...(patch.a === undefined ? {} : { aRule: undefined }),
    ...(patch.b === undefined ? {} : { bRule: undefined }),
  });

/** Makes a moment follow the sun, or stay at its clock time (null). */
export const setMomentRule = (survey: Survey, moment: 'a' | 'b', rule: MomentRule | null): Survey =>
  setMember(survey, 'moments', { [`${moment}Rule`]: rule ?? undefined });

/** Chooses subject, body or lenses by key. No undo step: see `carryChoices`. */
export const setCurrent = (
  survey: Survey,
  patch: { subject?: string; body?: string; lenses?: readonly string[] },
): Survey => setMember(survey, 'current', patch);

/** Sets which ends are in use in one flow configuration; what else the configuration says stays. */
export function setEndsInUse(
  survey: Survey,
  index: number,
  ends: { readonly arrivals: readonly EndRef[]; readonly departures: readonly EndRef[] },
): Survey {
  const flow = survey.sunside['flow'];
  const given = isObject(flow) ? flow['configurations'] : undefined;
  const list: readonly Json[] = Array.isArray(given) ? (given as readonly Json[]) : [];
  const old = list[index];
  const changed = patched(isObject(old) ? old : { name: 'In use' }, {
    arrivals: ends.arrivals.map((e) => ({ ...e })),
    departures: ends.departures.map((e) => ({ ...e })),
  });
  const configurations = index < list.length ? list.with(index, changed) : [...list, changed];
  return setMember(survey, 'flow', { configurations });
}

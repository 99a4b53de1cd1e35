import type { Survey } from '../document';
import { isObject, type Json } from '../json';
import type { ChosenWindow } from '../schema/plan';
import { patched } from './set-properties';

/** What the plan holds as a list; what stands there and is no list is replaced. */
function listIn(survey: Survey, member: 'moves' | 'chosen'): readonly Json[] {
  const plan = survey.sunside['plan'];
  const given = isObject(plan) ? plan[member] : undefined;
  return Array.isArray(given) ? (given as readonly Json[]) : [];
}

/** Says how one goes from spot to spot; undefined leaves it to the distance. */
export function setGoing(survey: Survey, by: 'foot' | 'bicycle' | 'car' | undefined): Survey {
  return withMember(survey, 'by', by);
}

function withList(survey: Survey, member: 'moves' | 'chosen', list: readonly Json[]): Survey {
  return withMember(survey, member, list.length > 0 ? list : undefined);
}

function withMember(survey: Survey, member: string, value: Json | undefined): Survey {
  const old = survey.sunside['plan'];
  const plan = patched(isObject(old) ? old : {}, { [member]: value });
  const stated = Object.keys(plan).length > 0 ? plan : undefined;
  return { ...survey, sunside: patched(survey.sunside, { plan: stated }) };
}

/** Says how many minutes it takes between two spots, either way; null goes back to the estimate. */
export function setMove(survey: Survey, a: string, b: string, minutes: number | null): Survey {
  const others = listIn(survey, 'moves').filter((entry) => !isBetween(entry, a, b));
  return withList(survey, 'moves', minutes === null ? others : [...others, { between: [a, b], minutes }]);
}

function isBetween(entry: Json, a: string, b: string): boolean {
  const between = isObject(entry) ? entry['between'] : undefined;
  return Array.isArray(between) && between.includes(a) && between.includes(b);
}

/** Takes windows into the plan; those of a spot and path that begin at the same instant are there once. */
export function chooseWindows(survey: Survey, windows: readonly ChosenWindow[]): Survey {
  const others = listIn(survey, 'chosen').filter(
    (entry) => !windows.some((window) => isWindow(entry, window)),
  );
  return withList(survey, 'chosen', [...others, ...windows.map((window) => ({ ...window }))]);
}

/** Takes one out again. */
export const dropWindow = (survey: Survey, window: ChosenWindow): Survey =>
  withList(
    survey,
    'chosen',
    listIn(survey, 'chosen').filter((entry) => !isWindow(entry, window)),
  );

const isWindow = (entry: Json, { spot, path, from }: ChosenWindow): boolean =>
  isObject(entry) && entry['spot'] === spot && entry['path'] === path && entry['from'] === from;

import type { Survey } from '../document';
import { isObject } from '../json';
import type { EndRef } from '../schema/site';
import { calmInFile, configurationsInFile, withFlow } from './flow-in-file';

/** A name that no other configuration of the survey has: with 2, 3 ... behind it where need be. */
function freeName(survey: Survey, wanted: string): string {
  const taken = configurationsInFile(survey).map((c) => (isObject(c) ? c['name'] : null));
  let name = wanted;
  for (let n = 2; taken.includes(name); n++) name = `${wanted} ${n}`;
  return name;
}

/** Adds a flow configuration as the least preferred one. */
export function addConfiguration(
  survey: Survey,
  name: string,
  ends: { readonly arrivals: readonly EndRef[]; readonly departures: readonly EndRef[] },
): Survey {
  const added = {
    name: freeName(survey, name),
    arrivals: ends.arrivals.map((e) => ({ ...e })),
    departures: ends.departures.map((e) => ({ ...e })),
  };
  return withFlow(survey, [...configurationsInFile(survey), added], calmInFile(survey));
}

import type { Survey } from '../document';
import { isObject, type Json, type JsonObject } from '../json';

/** The list of configurations as it stands in the file. */
export function configurationsInFile(survey: Survey): readonly Json[] {
  const flow = survey.sunside['flow'];
  const given = isObject(flow) ? flow['configurations'] : undefined;
  return Array.isArray(given) ? (given as readonly Json[]) : [];
}

/** Name of the calm-wind configuration, null for none; a place in the list is read as the name there. */
export function calmInFile(survey: Survey): string | null {
  const flow = survey.sunside['flow'];
  const calm = isObject(flow) ? flow['calm'] : undefined;
  if (typeof calm === 'string') return calm;
  const named = typeof calm === 'number' ? configurationsInFile(survey)[calm] : undefined;
  return isObject(named) && typeof named['name'] === 'string' ? named['name'] : null;
}

/** The survey with another list of configurations and another calm-wind one; what else flow says stays. */
export function withFlow(survey: Survey, configurations: readonly Json[], calm: string | null): Survey {
  const old = survey.sunside['flow'];
  const { calm: _calm, ...rest }: JsonObject = isObject(old) ? old : {};
  const flow: JsonObject = { ...rest, configurations, ...(calm === null ? {} : { calm }) };
  return { ...survey, sunside: { ...survey.sunside, flow } };
}

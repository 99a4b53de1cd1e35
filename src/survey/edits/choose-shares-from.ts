import type { Survey } from '../document';
import { isObject, type JsonObject } from '../json';
import type { SharesFrom } from '../schema/site';

/** Has shares of ends come from recorded flights or past winds alone; null for the better of them, month by month. */
export function chooseSharesFrom(survey: Survey, from: SharesFrom | null): Survey {
  const old = survey.sunside['flow'];
  const { sharesFrom: _old, ...rest }: JsonObject = isObject(old) ? old : {};
  const flow: JsonObject = { ...rest, ...(from !== null && { sharesFrom: from }) };
  return { ...survey, sunside: { ...survey.sunside, flow } };
}

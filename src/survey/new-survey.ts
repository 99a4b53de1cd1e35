import { surveyVersion, type Survey } from './document';
import type { JsonObject } from './json';

/** A survey with nothing drawn yet. */
export function newSurvey(site: JsonObject): Survey {
  return { type: 'FeatureCollection', sunside: { version: surveyVersion, site }, features: [] };
}

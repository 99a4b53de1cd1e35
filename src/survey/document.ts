import type { Json, JsonObject } from './json';

/** `[longitude, latitude]`, degrees, WGS84. Longitudes within +-180. */
export type Position = readonly [lng: number, lat: number];

export interface SurveyFeature {
  readonly type: 'Feature';
  readonly id: string;
  readonly properties: JsonObject | null;
  readonly geometry: JsonObject | null;
  readonly [foreign: string]: Json;
}

/**
 * The document: exactly the GeoJSON FeatureCollection that is saved, so that unknown kinds, properties and
 * members survive untouched. What it means, with defaults filled in, is read by `readContents`.
 * Edits return a new survey that shares every untouched feature with the old one.
 */
export interface Survey {
  readonly type: 'FeatureCollection';
  readonly sunside: JsonObject;
  readonly features: readonly SurveyFeature[];
  readonly [foreign: string]: Json;
}

export const surveyVersion = 1;

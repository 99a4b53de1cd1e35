import { readContents, type Contents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { openSurvey } from '../../src/survey/open';

type Properties = Record<string, unknown>;
type LngLat = readonly [lng: number, lat: number];

/** The text of a survey file as a person might write it. */
export const surveyText = (features: readonly unknown[], sunside: Properties = {}): string =>
  JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1, ...sunside }, features });

export function opened(text: string): Survey {
  const result = openSurvey(text);
  if (!result.ok) throw new Error(`expected a survey, got: ${result.reason}`);
  return result.survey;
}

/** What the figures read, through the same door as a file. */
export const contentsOf = (features: readonly unknown[], sunside: Properties = {}): Contents =>
  readContents(opened(surveyText(features, sunside)));

export const feature = (
  id: string,
  kind: string,
  type: 'Point' | 'LineString' | 'Polygon',
  coordinates: unknown,
  properties: Properties = {},
) => ({ type: 'Feature', id, properties: { kind, ...properties }, geometry: { type, coordinates } });

export const runwayFeature = (
  id: string,
  a: LngLat,
  b: LngLat,
  ends: readonly [Properties, Properties],
  properties: Properties = {},
) => feature(id, 'runway', 'LineString', [a, b], { ends, ...properties });

export const spotFeature = (id: string, at: LngLat, properties: Properties = {}) =>
  feature(id, 'standing-spot', 'Point', at, { name: id, ...properties });

/** A subject with numbers that cannot be mistaken for one another. */
export const plainSubject = {
  key: 'plain',
  name: 'Plain',
  length: 30,
  span: 26,
  height: 9,
  propulsion: 'jet',
  approachSpeed: 70,
  climbSpeed: 80,
  groundRun: 1500,
  landingRun: 900,
  climbGradient: 0.12,
};

export const plainKit = {
  fill: 0.8,
  bodies: [
    { key: 'full', name: 'Full', sensorWidth: 36, sensorHeight: 24, pixelsWide: 6000, pixelsHigh: 4000 },
    { key: 'crop', name: 'Crop', sensorWidth: 23.5, sensorHeight: 15.6, pixelsWide: 6000, pixelsHigh: 4000 },
  ],
  lenses: [
    { key: 'zoom', name: 'Zoom', shortest: 70, longest: 200, widestAperture: 4 },
    { key: 'long', name: 'Long', shortest: 150, longest: 400, widestAperture: 5.6, extenders: [1.4] },
  ],
};

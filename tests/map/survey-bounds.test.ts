import { describe, expect, test } from 'vitest';
import { surveyBounds } from '../../src/map/survey-bounds';
import { readContents } from '../../src/survey/contents';
import type { Survey, SurveyFeature } from '../../src/survey/document';
import { field } from './field';

const drawn = (id: string, kind: string, type: string, coordinates: unknown) =>
  ({
    type: 'Feature',
    id,
    properties: { kind, height: 10, heights: [300, 300] },
    geometry: { type, coordinates },
  }) as unknown as SurveyFeature;
const with_ = (...more: SurveyFeature[]): Survey => ({ ...field, features: [...field.features, ...more] });
const boundsOf = (survey: Survey) => surveyBounds(readContents(survey));
const track = drawn('track', 'flight-path', 'LineString', [
  [6.9, 50.05],
  [7.1, 49.95],
]);

describe('the whole of a survey', () => {
  test('[M314] is its airfield: a track of 15 km and a wood 3 km off do not make a speck of it', () => {
    const wood = drawn('wood', 'obstacle', 'LineString', [
      [7.05, 50.02],
      [7.06, 50.02],
    ]);
    expect(boundsOf(with_(track, wood))).toEqual(boundsOf(field));
  });
  test('[M315] has the runway, every spot however far off, and what stands near', () => {
    const [[west, south], [east, north]] = boundsOf(field) ?? [
      [0, 0],
      [0, 0],
    ];
    expect([west, east]).toEqual([6.98, 7.016]);
    expect([south, north]).toEqual([49.99, 50.0075]);
    const hill = drawn('hill', 'standing-spot', 'Point', [7.09, 50.03]);
    expect(boundsOf(with_(hill))?.[1]).toEqual([7.09, 50.03]);
  });
  test('[M316] where nothing but a track is drawn it is the track; of nothing there is no whole', () => {
    expect(boundsOf({ ...field, features: [track] })).toEqual([
      [6.9, 49.95],
      [7.1, 50.05],
    ]);
    expect(boundsOf({ ...field, features: [] })).toBeNull();
  });
  test('[M317] east of the antimeridian the corners run on', () => {
    const sunside = {
      ...(field as unknown as { sunside: object }).sunside,
      site: { reference: [179.99, 0] },
    };
    const across = drawn('rw', 'runway', 'LineString', [
      [179.985, 0],
      [-179.995, 0],
    ]);
    const bounds = boundsOf({ ...field, sunside, features: [across] });
    expect(bounds?.[0][0]).toBeCloseTo(179.985, 6);
    expect(bounds?.[1][0]).toBeCloseTo(180.005, 6);
  });
});

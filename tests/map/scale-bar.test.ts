import { describe, expect, test } from 'vitest';
import { scaleBar } from '../../src/map/scale-bar';
import { zoomStepOf } from '../../src/map/screen';
import { surveyBounds } from '../../src/map/survey-bounds';
import { readContents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { field } from './field';

describe('the scale bar', () => {
  test.each([
    // Web Mercator: 40,075,017 m round the equator on 512 px at zoom 0; 78,271.52 m a pixel, halved by each zoom.
    [0, 10, '5 km', 5000 / 76.437],
    [60, 14, '200 m', 200 / (4.77731 / 2)],
    [-35, 18, '20 m', 20 / (0.298582 * 0.819152)],
  ])('at latitude %s and zoom %s is %s long', (lat, zoom, label, pixels) => {
    const bar = scaleBar(lat, zoom);
    expect(bar.label).toBe(label);
    expect(bar.pixels).toBeCloseTo(pixels, 1);
  });

  test('is a round number of feet where these are preferred', () => {
    const bar = scaleBar(60, 14, 'ft');
    expect(bar.label).toBe('1,000 ft');
    expect(bar.pixels).toBeCloseTo(304.8 / (4.77731 / 2), 1);
  });

  test.each([3, 7.3, 11.9, 16.2, 20])('fits at zoom %s', (zoom) => {
    const { pixels } = scaleBar(48, zoom);
    expect(pixels).toBeGreaterThan(45);
    expect(pixels).toBeLessThanOrEqual(130);
  });
});

test('zoom steps are quarters', () => {
  expect([13.1, 13.13, 13.9].map(zoomStepOf)).toEqual([13, 13.25, 14]);
});

describe('the whole survey', () => {
  test('holds every runway, spot and area', () => {
    expect(surveyBounds(readContents(field))).toEqual([
      [6.98, 49.99],
      [7.016, 50.0075],
    ]);
  });

  test('may lie across the antimeridian', () => {
    const runway = {
      ...field.features[0],
      geometry: {
        type: 'LineString',
        coordinates: [
          [179.99, -16],
          [-179.99, -16.01],
        ],
      },
    };
    const survey = {
      ...field,
      sunside: { version: 1, site: { reference: [179.995, -16] } },
      features: [runway],
    } as unknown as Survey;
    const [southWest, northEast] = surveyBounds(readContents(survey)) ?? [];
    expect(southWest?.[0]).toBeCloseTo(179.99, 9);
    expect(northEast?.[0]).toBeCloseTo(180.01, 9);
  });

  test('is nothing when nothing is drawn', () => {
    expect(surveyBounds(readContents({ ...field, features: [] }))).toBeNull();
  });
});

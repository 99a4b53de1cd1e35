import geodesic from 'geographiclib-geodesic';
import { expect, test } from 'vitest';
import { duplicateBeside } from '../../src/state/duplicate-beside';
import { newSurvey } from '../../src/survey/new-survey';
import { addFeature } from '../../src/survey/edits/add-feature';

const survey = addFeature(
  addFeature(
    newSurvey({}),
    'r',
    'runway',
    {
      type: 'LineString',
      coordinates: [
        [8.53, 47.46],
        [8.56, 47.45],
      ],
    },
    { name: 'Main' },
  ),
  's',
  'standing-spot',
  { type: 'Point', coordinates: [8.55, 47.44] },
  {},
);

test('the copy stands behind the original, 50 m to the south-east, every vertex of it', () => {
  const copied = duplicateBeside(survey, 'r', 'copy');
  expect(copied.features.map((f) => f.id)).toEqual(['r', 'copy', 's']);
  expect(copied.features[1]?.properties).toEqual({ kind: 'runway', name: 'Main (copy)' });
  const line = (i: number) => copied.features[i]?.geometry?.['coordinates'] as [number, number][];
  for (const [k, [lng, lat]] of line(0).entries()) {
    const [toLng, toLat] = line(1)[k] as [number, number];
    const { s12, azi1 } = geodesic.Geodesic.WGS84.Inverse(lat, lng, toLat, toLng);
    expect(s12).toBeCloseTo(50, 1);
    expect(azi1).toBeCloseTo(135, 1);
  }
});

test('an unknown id, or a geometry that cannot be edited, leaves the survey as it is', () => {
  expect(duplicateBeside(survey, 'gone', 'copy')).toBe(survey);
  const odd = {
    ...survey,
    features: [
      { ...survey.features[0], id: 'r', type: 'Feature' as const, properties: null, geometry: null },
    ],
  };
  expect(duplicateBeside(odd, 'r', 'copy')).toBe(odd);
});

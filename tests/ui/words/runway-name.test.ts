import { expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import type { Survey } from '../../../src/survey/document';
import { runwayName } from '../../../src/ui/words/runway-name';

const named = (...designators: (string | undefined)[]) => {
  const survey = {
    type: 'FeatureCollection',
    features: [
      {
        type: 'Feature',
        id: 'rw',
        properties: { kind: 'runway', name: 'Main', ends: designators.map((designator) => ({ designator })) },
        geometry: {
          type: 'LineString',
          coordinates: [
            [7, 50],
            [7.02, 50],
          ],
        },
      },
    ],
  } as unknown as Survey;
  return runwayName(readContents(survey), 'rw');
};

test('[U7] a runway is called by its lower designator first, whichever end was drawn first', () => {
  expect(named('23', '05')).toBe('05/23');
  expect(named('27L', '09R')).toBe('09R/27L');
  expect(named('9', '27')).toBe('9/27');
  expect(named('N', '18')).toBe('18/N');
  expect(named('23', '')).toBe('23/?');
  expect(named('', '')).toBe('Main');
});

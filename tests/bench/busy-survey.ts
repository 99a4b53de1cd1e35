import type { Position, Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { newSurvey } from '../../src/survey/new-survey';

/** Two crossing runways, so four ends, and ten standing spots round them: the survey of the drag budget. */
export function busySurvey(): Survey {
  let survey = newSurvey({
    name: 'Bench field',
    elevation: 25,
    timeZone: 'Europe/London',
    reference: [-0.46, 51.4776],
  });
  const runway = (id: string, a: Position, b: Position, designators: readonly [string, string]) => {
    const ends = designators.map((designator) => ({ designator, elevation: 25 }));
    survey = addFeature(
      survey,
      id,
      'runway',
      { type: 'LineString', coordinates: [a, b] },
      { width: 45, ends },
    );
  };
  runway('long', [-0.485, 51.4775], [-0.4288653, 51.4777007], ['09', '27']);
  runway('short', [-0.462, 51.468], [-0.45, 51.487], ['02', '20']);
  for (let i = 0; i < 10; i++) {
    const coordinates: Position = [-0.492 + 0.0062 * i, 51.4727 + 0.0004 * (i % 3)];
    survey = addFeature(
      survey,
      `spot${i}`,
      'standing-spot',
      { type: 'Point', coordinates },
      { name: `Spot ${i + 1}` },
    );
  }
  return survey;
}

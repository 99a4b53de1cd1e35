import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { busySurvey } from './busy-survey.ts';

/** The survey of the opening budget: 5,000 features, nearly all of them small obstacles. */
export function largeSurvey(): Survey {
  const many: Survey['features'][number][] = [];
  for (let i = 0; i < 4988; i++) {
    const [x, y] = [-0.5 + 0.0008 * (i % 90), 51.45 + 0.0009 * Math.floor(i / 90)];
    const ring = [
      [x, y],
      [x + 0.0003, y],
      [x + 0.0003, y + 0.0003],
      [x, y],
    ] as const;
    const added = addFeature(
      { ...busySurvey(), features: [] },
      `o${i}`,
      'obstacle',
      { type: 'Polygon', coordinates: [ring] },
      { height: 5 + (i % 20) },
    );
    many.push(...added.features);
  }
  const survey = busySurvey();
  return { ...survey, features: [...survey.features, ...many] };
}

import { problemsOf } from '../../src/figures/checks/problems';
import { readContents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { addFeature } from '../../src/survey/edits/add-feature';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { busySurvey } from './busy-survey.ts';
import { measure, printed } from './measure.ts';

/** A survey of 5,000 features: opened, read and checked. */
export function openLargeSurvey(): void {
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
  const survey = { ...busySurvey() };
  const text = saveSurvey({ ...survey, features: [...survey.features, ...many] });
  const times = measure(20, () => {
    const opened = openSurvey(text);
    if (!opened.ok) throw new Error(opened.reason);
    const contents = readContents(opened.survey);
    problemsOf(contents, [], Date.UTC(2026, 5, 21));
  });
  console.log(
    `open a survey of 5,000 features (${Math.round(text.length / 1024)} kB, budget 100 ms of script)`,
  );
  console.log(`  open, read, check     ${printed(times)}`);
}

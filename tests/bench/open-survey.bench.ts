import { problemsOf } from '../../src/figures/checks/problems';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { largeSurvey } from './large-survey.ts';
import { measure, printed } from './measure.ts';

/** A survey of 5,000 features: opened, read and checked. What the page makes of it is in in-browser.ts. */
export function openLargeSurvey(): void {
  const text = saveSurvey(largeSurvey());
  const times = measure(20, () => {
    const opened = openSurvey(text);
    if (!opened.ok) throw new Error(opened.reason);
    const contents = readContents(opened.survey);
    problemsOf(contents, [], Date.UTC(2026, 5, 21));
  });
  console.log(
    `open a survey of 5,000 features (${Math.round(text.length / 1024)} kB, budget 60 ms of script)`,
  );
  console.log(`  open, read, check     ${printed(times)}`);
}

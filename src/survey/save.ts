import type { Survey, SurveyFeature } from './document';

export const surveyMediaType = 'application/geo+json';
export const surveyExtension = '.geojson';

/**
 * The survey as text of a file: one feature a line, so that versions of it compare well. Members and features
 * keep their order, so two saves of one survey are the same bytes.
 */
export function saveSurvey(survey: Survey): string {
  const members = Object.entries(survey).map(([key, value]) => {
    const text =
      key === 'features'
        ? `[\n${survey.features.map(textOf).join(',\n')}\n]`
        : JSON.stringify(value, null, key === 'sunside' ? 1 : 0);
    return `${JSON.stringify(key)}: ${text}`;
  });
  return `{\n${members.join(',\n')}\n}\n`;
}

const texts = new WeakMap<SurveyFeature, string>();

/** Surveys share what an edit left alone, so of a large survey only that is written anew which was edited. */
function textOf(feature: SurveyFeature): string {
  const known = texts.get(feature);
  if (known !== undefined) return known;
  const text = JSON.stringify(feature);
  texts.set(feature, text);
  return text;
}

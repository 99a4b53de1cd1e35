import type { Survey } from './document';

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
        ? `[\n${survey.features.map((feature) => JSON.stringify(feature)).join(',\n')}\n]`
        : JSON.stringify(value, null, key === 'sunside' ? 1 : 0);
    return `${JSON.stringify(key)}: ${text}`;
  });
  return `{\n${members.join(',\n')}\n}\n`;
}

import { atOnce } from './at-once';
import type { Survey, SurveyFeature } from './document';

export const surveyMediaType = 'application/geo+json';
export const surveyExtension = '.geojson';

/**
 * The survey as text of a file: one feature a line, so that versions of it compare well. Members and features
 * keep their order, so two saves of one survey are the same bytes.
 */
export const saveSurvey = (survey: Survey): string => atOnce(savingSurvey(survey));

/** The same feature by feature: a season of recorded flights is 40 MB. */
export function* savingSurvey(survey: Survey): Generator<void, string> {
  const pieces: string[] = [];
  for (const [key, value] of Object.entries(survey)) {
    pieces.push(pieces.length === 0 ? '{\n' : ',\n', JSON.stringify(key), ': ');
    if (key !== 'features') {
      pieces.push(JSON.stringify(value, null, key === 'sunside' ? 1 : 0));
      continue;
    }
    pieces.push('[\n');
    for (const [i, feature] of survey.features.entries()) {
      pieces.push(i === 0 ? '' : ',\n', textOf(feature));
      yield;
    }
    pieces.push('\n]');
  }
  pieces.push('\n}\n');
  // All at once: what is put together bit by bit is copied once more by whoever reads it.
  return pieces.join('');
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

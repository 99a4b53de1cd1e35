import type { Survey, SurveyFeature } from '../document';

/** The survey with one feature replaced; the same survey when the id is unknown or nothing changes. */
export function changeFeature(
  survey: Survey,
  id: string,
  change: (feature: SurveyFeature) => SurveyFeature,
): Survey {
  const index = survey.features.findIndex((f) => f.id === id);
  const old = survey.features[index];
  if (!old) return survey;
  const changed = change(old);
  return changed === old ? survey : { ...survey, features: survey.features.with(index, changed) };
}

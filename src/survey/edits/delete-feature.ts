import type { Survey } from '../document';

/** Takes a feature away. */
export function deleteFeature(survey: Survey, id: string): Survey {
  const features = survey.features.filter((f) => f.id !== id);
  return features.length === survey.features.length ? survey : { ...survey, features };
}

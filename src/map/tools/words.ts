import type { SurveyFeature } from '../../survey/document';
import { kinds } from '../../survey/kinds';
import { kindOf } from '../../survey/read-feature';

/** What a feature is called in the name of an undo step. */
export const wordFor = (feature: SurveyFeature): string => {
  const kind = kindOf(feature);
  return kind === null ? 'feature' : kinds[kind].word;
};

import type { SurveyFeature } from '../../survey/document';
import { kindOf } from '../../survey/read-feature';

const words = {
  runway: 'runway',
  'standing-spot': 'standing spot',
  obstacle: 'obstacle',
  'no-go': 'no-go area',
  apron: 'apron',
  'taxi-route': 'taxi route',
  'flight-path': 'flight path',
  'ground-use': 'ground use',
  'log-entry': 'log entry',
} as const;

/** What a feature is called in the name of an undo step. */
export const wordFor = (feature: SurveyFeature): string => {
  const kind = kindOf(feature);
  return kind === null ? 'feature' : words[kind];
};

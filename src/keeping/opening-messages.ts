import type { Survey, SurveyFeature } from '../survey/document';
import type { Problem } from '../survey/problems';

/** What the worker is asked for: one text, once. */
export type OpeningRequest = File | string;

/** What it answers, in this order; the features come in pieces, so that none of them holds the page up. */
export type OpeningAnswer =
  | { readonly part: 'refused'; readonly reason: string }
  | {
      readonly part: 'head';
      /** All of the survey but its features, whose place among the members is kept. */
      readonly survey: Survey;
      readonly problems: readonly Problem[];
      readonly newer: boolean;
      readonly count: number;
    }
  | { readonly part: 'features'; readonly features: readonly SurveyFeature[] };

import type { Json } from '../survey/json';

/** What both sides changed, each in its own way. `undefined`: the side does not have it. */
export interface Question {
  /** Id of the feature that it is about; null for the survey's own members. */
  readonly id: string | null;
  /** RFC 6901, within the feature, or within the survey where `id` is null; "" is the whole feature. */
  readonly pointer: string;
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
  /** What both began with; undefined where that is not known or was not there. */
  readonly base: Json | undefined;
}

export type Take = 'mine' | 'theirs';

/** Answers a question, or leaves it open with null. */
export type Decide = (question: Question) => Take | null;

/** One reference token of a JSON pointer (RFC 6901, section 4). */
export const pointerTo = (within: string, member: string | number): string =>
  `${within}/${String(member).replaceAll('~', '~0').replaceAll('/', '~1')}`;

import { displayFigures, type DisplayFigures } from '../figures/display/display-figures';
import { patterns } from '../figures/traffic/patterns';
import { patternKinds, type DisplayLine, type PatternKind } from '../survey/schema/flying';
import type { Derived } from './derived.svelte';

/** What follows from a display line on the day shown. */
export const displayAnswers = (
  display: DisplayLine,
  { contents, day }: Pick<Derived, 'contents' | 'day'>,
): DisplayFigures => displayFigures(display, contents, day.date);

/** What else can be flown at a runway's end, as people say it. */
export const patternWords: readonly (readonly [PatternKind, string])[] = patternKinds.map((kind) => [
  kind,
  patterns[kind].word,
]);
export const isStream = (kind: PatternKind): boolean => patterns[kind].streams;

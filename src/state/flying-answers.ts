import { displayFigures, type DisplayFigures } from '../figures/display/display-figures';
import { actPlaces } from '../figures/display/act-places';
import type { Act } from '../figures/display/programme-acts';
import type { BestPlace } from '../figures/movements/best-places';
import { formationSpans } from '../figures/traffic/pattern/practice';
import { patterns } from '../figures/traffic/patterns';
import { patternKinds, type DisplayLine, type PatternKind } from '../survey/schema/flying';
import type { Subject } from '../survey/schema/subject';
import type { Derived } from './derived.svelte';

/** What follows from a display line on the day shown. */
export const displayAnswers = (
  display: DisplayLine,
  { contents, day }: Pick<Derived, 'contents' | 'day'>,
): DisplayFigures => displayFigures(display, contents, day.date);

/** Where to stand for each act of a display on the day shown. */
export const placesForActs = (
  display: DisplayLine,
  acts: readonly Act[],
  { contents, terrain }: Pick<Derived, 'contents' | 'terrain'>,
): readonly (BestPlace | null)[] => actPlaces(acts, display, contents, terrain);

/** m from centre to centre that a formation of a subject usually keeps. */
export const usualSpacing = ({ span }: Pick<Subject, 'span'>): number => formationSpans * span;

/** What else can be flown at a runway's end, as people say it. */
export const patternWords: readonly (readonly [PatternKind, string])[] = patternKinds.map((kind) => [
  kind,
  patterns[kind].word,
]);
export const isStream = (kind: PatternKind): boolean => patterns[kind].streams;

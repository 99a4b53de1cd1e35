import type { Survey } from '../document';
import type { Json } from '../json';
import type { FlownBand } from '../schema/flown-band';
import { entryIndex, readEntry } from '../kit-lists';
import type { EndRef } from '../schema/site';
import { changeEntry } from './change-entry';
import { listInFile } from './kit-in-file';
import { setRunwayEnd } from './set-properties';

/** What recorded flights say of a runway's end; null leaves the survey's word. Degrees; m of the wheels above the landing threshold. */
export interface LearnedEnd {
  readonly ref: EndRef;
  readonly glide: number | null;
  readonly crossingHeight: number | null;
  /** Heights and offsets along its paths; an empty list leaves what stands there. */
  readonly flown: readonly FlownBand[];
}

/** What they say of a subject: m, and rise over run. */
export interface LearnedSubject {
  readonly key: string;
  readonly groundRun: number | null;
  readonly climbGradient: number | null;
}

export interface LearnedWords {
  readonly ends: readonly LearnedEnd[];
  readonly subject: LearnedSubject | null;
}

/** Puts what recorded flights have taught into the runways' ends and the subject. */
export function takeLearned(survey: Survey, { ends, subject }: LearnedWords): Survey {
  const withEnds = ends.reduce(
    (changed, { ref, glide, crossingHeight, flown }) =>
      setRunwayEnd(changed, ref.runway, ref.end, {
        ...(glide !== null && { glide }),
        ...(crossingHeight !== null && { crossingHeight }),
        ...(flown.length > 0 && { flown: flown }),
      }),
    survey,
  );
  return subject ? withSubject(withEnds, subject) : withEnds;
}

function withSubject(survey: Survey, { key, groundRun, climbGradient }: LearnedSubject): Survey {
  const list = listInFile(survey, 'subjects');
  const reading = readEntry('subjects', list[entryIndex('subjects', list, key)]);
  if (!reading.ok) return survey;
  return changeEntry(survey, 'subjects', key, {
    ...reading.entry,
    ...(groundRun !== null && { groundRun }),
    ...(climbGradient !== null && { climbGradient }),
  });
}

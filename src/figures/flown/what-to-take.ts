import type { Contents } from '../../survey/contents';
import type { LearnedEnd, LearnedSubject, LearnedWords } from '../../survey/edits/take-learned';
import type { Subject } from '../../survey/schema/subject';
import { bandToKeep } from './band-to-keep';
import type { Flown, Learned } from './learn';

export interface WhatToTake extends LearnedWords {
  /** Subjects whose own approach angle or crossing height goes before what the ends will say. */
  readonly overriding: readonly Pick<Subject, 'name' | 'approachAngle' | 'crossingHeight'>[];
}

/**
 * The medians that the survey can take over from its recorded flights, null where there are none. An end's arrivals go
 * before its circuits, which are light aircraft's; the subject's run and climb are those of the departures with most
 * flights. What no field can hold (a crossing height below the ground) is left as it is.
 */
export function whatToTake(
  { subject, subjects }: Pick<Contents, 'subject' | 'subjects'>,
  { flown }: Learned,
): WhatToTake | null {
  const landed = (kind: Flown['kind']) => flown.filter((f) => f.kind === kind && f.glide);
  const arrivals = landed('arrival');
  const only = landed('circuit').filter(
    (c) => !arrivals.some((a) => a.runway === c.runway && a.end === c.end),
  );
  const words = [...arrivals, ...only].map((f) => [f, endWords(f)] as const);
  // What is flown at an end goes with it, be it a departure that tells nothing of its glide.
  const ends = [...new Map(flown.map((f) => [`${f.runway} ${f.end}`, f])).values()].flatMap(
    ({ runway, end }): LearnedEnd[] => {
      const of = (f: Pick<Flown, 'runway' | 'end'>) => f.runway === runway && f.end === end;
      const told = words.find(([f]) => of(f))?.[1] ?? { glide: null, crossingHeight: null };
      const bands = flown.filter(of).flatMap((f) => bandToKeep(f) ?? []);
      const empty = told.glide === null && told.crossingHeight === null && bands.length === 0;
      return empty ? [] : [{ ref: { runway, end }, ...told, flown: bands }];
    },
  );
  const taken = subjectFrom(subject, flown);
  if (ends.length === 0 && !taken) return null;
  const overriding = subjects.filter((s) => s.approachAngle !== null || s.crossingHeight !== null);
  return { ends, subject: taken, overriding: words.length > 0 ? overriding : [] };
}

const endWords = ({ glide, wheels }: Flown): Pick<LearnedEnd, 'glide' | 'crossingHeight'> => ({
  glide: glide && within(glide.median, 1, 12, 2),
  crossingHeight: wheels && within(wheels.median, 0, 60, 1),
});

function subjectFrom({ key }: Subject, flown: readonly Flown[]): LearnedSubject | null {
  const [most] = flown
    .filter(({ liftOff, gradient }) => liftOff && gradient)
    .toSorted((a, b) => b.flights.length - a.flights.length);
  if (!most?.liftOff || !most.gradient) return null;
  return {
    key,
    groundRun: within(most.liftOff.median, 0, 6000, 0),
    climbGradient: within(most.gradient.median, 0.001, 3, 3),
  };
}

/** Rounded to so many decimals, if a field of that range can hold it. */
function within(value: number, least: number, most: number, decimals: number): number | null {
  const rounded = Number(value.toFixed(decimals));
  return rounded >= least && rounded <= most ? rounded : null;
}

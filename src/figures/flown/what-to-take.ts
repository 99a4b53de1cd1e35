import type { Contents } from '../../survey/contents';
import type { LearnedEnd, LearnedSubject, LearnedWords } from '../../survey/edits/take-learned';
import type { Subject } from '../../survey/schema/subject';
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
  const ends = [...arrivals, ...only].map(endFrom);
  const taken = subjectFrom(subject, flown);
  if (ends.length === 0 && !taken) return null;
  const overriding = subjects.filter((s) => s.approachAngle !== null || s.crossingHeight !== null);
  return { ends, subject: taken, overriding: ends.length > 0 ? overriding : [] };
}

const endFrom = ({ runway, end, glide, wheels }: Flown): LearnedEnd => ({
  ref: { runway, end },
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

import type { Contents } from '../../survey/contents';
import type { DisplayLine } from '../../survey/schema/flying';
import { actLight, type ActLight } from '../display/act-light';
import { actsOf, isOn, type Act } from '../display/programme-acts';
import type { Position } from '../../survey/document';
import type { Subject } from '../../survey/schema/subject';
import type { PathRef } from '../types';
import type { DayRow } from '../when/day-rows';

/** What a programme has for one day. */
export interface Programme {
  readonly display: DisplayLine;
  readonly acts: readonly Act[];
  readonly timeZone: string;
}

/** An act that falls into a window, and how it is lit from where one stands then. */
export interface ActDue {
  readonly act: Act;
  readonly light: ActLight | null;
}

/**
 * The programmes of a local date, of those displays that have one with times. One whose acts are all on other days is
 * among them, with none: nothing is flown by it on this one.
 */
export const programmesOn = (
  { displayLines, subjects, site: { timeZone } }: Pick<Contents, 'displayLines' | 'subjects' | 'site'>,
  date: string,
): Programme[] =>
  displayLines
    .filter(({ programme }) => programme.length > 0)
    .map((display) => ({
      display,
      acts: actsOf(display, date, timeZone, subjects).filter((act) => act.date === date),
      timeZone,
    }))
    .filter(({ acts }) => acts.length === 0 || acts.some(({ slot }) => slot !== null));

/** What an act is framed for: its own type where one is known, else the subject at hand. */
export const framedFor = ({ type }: Act, atHand: Subject): Subject =>
  type.kind === 'known' ? type.subject : atHand;

/** The programme that a path is flown by; null for one that is flown whenever its ends are in use, or all day. */
export const programmeOf = (programmes: readonly Programme[], { path, kind }: PathRef): Programme | null =>
  kind === 'pass' ? (programmes.find(({ display }) => path.startsWith(`${display.id}/`)) ?? null) : null;

/** The same with those acts alone that are framed for one subject. */
export function programmeFor(
  programmes: readonly Programme[],
  { path, subject }: Pick<DayRow, 'path' | 'subject'>,
  atHand: Subject,
): Programme | null {
  const programme = programmeOf(programmes, path.ref);
  return (
    programme && {
      ...programme,
      acts: programme.acts.filter((act) => framedFor(act, atHand).key === subject.key),
    }
  );
}

/** Whether a path may be flown at an instant (ms since 1970), as far as programmes tell: one that has none may always. */
export const mayBeFlown = (programmes: readonly Programme[], ref: PathRef, instant: number): boolean => {
  const programme = programmeOf(programmes, ref);
  return programme === null || isActOn(programme, instant);
};

/** Whether one of its acts is on at an instant (ms since 1970). */
export const isActOn = ({ acts }: Programme, instant: number): boolean =>
  acts.some((act) => isOn(act, instant));

/** The acts of a stretch of time (`to` excluded) as they are lit for whoever looks from a spot `at` where they are best. */
export function actsWithin(
  { acts, timeZone }: Programme,
  spot: Position,
  at: Position,
  from: number,
  to: number,
): ActDue[] {
  return acts
    .filter(({ slot }) => slot !== null && slot.from < to && slot.to > from)
    .map((act) => ({ act, light: actLight(act, at, spot, timeZone) }));
}

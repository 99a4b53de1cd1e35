import type { Subject } from '../../survey/schema/subject';
import type { Act } from '../display/programme-acts';
import { framedFor, type ActDue, type Programme } from './acts-due';
import type { PlanWindow } from './windows';

/** An act of the day's programme with the window that is worth most of those in which it is flown. */
export interface ActWindow extends ActDue {
  /** Null where no spot is worth waiting at for it. */
  readonly window: PlanWindow | null;
  /** What it is framed for. */
  readonly subject: Subject;
}

/** The acts with a time of displays whose passes are looked at, in order of time. `windows`: best first. */
export function actWindows(
  windows: readonly PlanWindow[],
  programmes: readonly Programme[],
  atHand: Subject,
): ActWindow[] {
  const found = new Map<Act, Omit<ActWindow, 'subject'>>();
  for (const window of windows)
    for (const due of window.acts) if (!found.has(due.act)) found.set(due.act, { ...due, window });
  return programmes
    .filter(({ display }) => display.passes.length > 0)
    .flatMap(({ acts }) => acts.filter(({ slot }) => slot !== null))
    .map((act) => ({
      ...(found.get(act) ?? { act, light: null, window: null }),
      subject: framedFor(act, atHand),
    }))
    .sort((a, b) => (a.act.slot?.from ?? 0) - (b.act.slot?.from ?? 0));
}

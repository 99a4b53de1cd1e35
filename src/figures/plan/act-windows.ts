import type { ActDue } from './acts-due';
import type { PlanWindow } from './windows';

/** An act of the day's programme with the window that is worth most of those in which it is flown. */
export interface ActWindow extends ActDue {
  readonly window: PlanWindow;
}

/** The acts that some window holds, in order of time. `windows`: best first. */
export function actWindows(windows: readonly PlanWindow[]): ActWindow[] {
  const found: ActWindow[] = [];
  for (const window of windows)
    for (const due of window.acts)
      if (!found.some(({ act }) => act === due.act)) found.push({ ...due, window });
  return found.sort((a, b) => (a.act.slot?.from ?? 0) - (b.act.slot?.from ?? 0));
}

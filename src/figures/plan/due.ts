import type { Runway } from '../../survey/schema/runway';
import type { DueMovement } from '../movements/due-on';
import { namesEnd } from '../movements/names-end';
import { dueWeight, dueWithin, starredWeight } from '../practice';
import type { PathRef } from '../types';

/** What of the list may come along a path: its use, and its end where the list names one. */
export function dueOnPath(
  due: readonly DueMovement[],
  { kind, runway, end }: PathRef,
  runways: readonly Runway[],
): DueMovement[] {
  const designator = end === null ? '' : (runways.find((r) => r.id === runway)?.ends[end].designator ?? '');
  return due.filter(
    ({ movement }) =>
      movement.use === kind && (movement.runway === '' || namesEnd(movement.runway, designator)),
  );
}

/** Times that a moment counts: more while something is due, most while something starred is. */
export function weightAt(due: readonly DueMovement[], instant: number): number {
  let weight = 1;
  for (const { movement, instant: at } of due)
    if (Math.abs(at - instant) <= dueWithin * 60_000)
      weight = Math.max(weight, movement.starred ? starredWeight : dueWeight);
  return weight;
}

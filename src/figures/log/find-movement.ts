import type { Contents } from '../../survey/contents';
import { dateAt } from '../../time/local-time';
import { dueOn, type DueMovement } from '../movements/due-on';
import { movementsApart, movementWithin } from './practice';

export interface FoundMovement {
  readonly due: DueMovement | null;
  readonly doubts: readonly string[];
}

/**
 * The movement nearest to a pass from `from` to `to` (ms since 1970), if no other is within 3 minutes of the pass. What was
 * due more than 20 minutes away is not taken for it.
 */
export function findMovement(
  from: number,
  to: number,
  { movements, site }: Pick<Contents, 'movements' | 'site'>,
): FoundMovement {
  const days = new Set([-movementWithin, movementWithin].map((d) => dateAt(from + d, site.timeZone)));
  const away = ({ instant }: DueMovement) => Math.max(0, from - instant, instant - to);
  const near = [...days]
    .flatMap((day) => dueOn(movements, day, site.timeZone))
    .filter((due) => away(due) <= movementWithin)
    .toSorted((a, b) => away(a) - away(b));
  const [nearest, second] = near;
  if (!nearest) return { due: null, doubts: [] };
  if (second && away(second) <= movementsApart) {
    const [a, b] = [nearest, second].map(({ movement }) => wordsOf(movement));
    return { due: null, doubts: [`Two movements were due: ${a} or ${b}?`] };
  }
  return { due: nearest, doubts: [] };
}

const wordsOf = ({ time, use, type, flight }: DueMovement['movement']): string =>
  [time, use, type, flight].filter((part) => part !== '').join(' ');

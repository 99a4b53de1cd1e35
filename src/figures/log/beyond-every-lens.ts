import type { Lens } from '../../survey/schema/kit';
import { focalWithin } from './practice';

/** Whether no lens of the kit has a focal length (mm) by itself: an extender may have been on it, which no camera need write. */
export const beyondEveryLens = (
  focalLength: number,
  lenses: readonly Pick<Lens, 'shortest' | 'longest'>[],
): boolean =>
  !lenses.some(
    ({ shortest, longest }) =>
      focalLength >= shortest * (1 - focalWithin) && focalLength <= longest * (1 + focalWithin),
  );

import type { SightProfile } from '../../figures/sight/profile';
import type { Sample } from '../../figures/types';
import type { Formats } from '../formats';
import { hiderWords } from '../words/sight-words';

type Named = Parameters<typeof hiderWords>[1];

/** How much of the aircraft shows, what is in the way first, and what would help: the picture in words. */
export function profileWords(
  { distance, first, raise, leastVisible, wheels }: SightProfile,
  { score }: Pick<Sample, 'score'>,
  obstacles: Named,
  format: Formats,
): string {
  // Ground far below a flying aircraft is nothing to speak of.
  const clear =
    leastVisible === null || wheels - leastVisible > 5
      ? 'Nothing is in the way.'
      : `What is lower by more than ${format.fine(Math.max(0, wheels - leastVisible))} is hidden.`;
  if (!first) return `In sight, ${format.length(distance)} away over the ground. ${clear}`;
  const by = hiderWords(first.by, obstacles);
  const state = score.sight === 0 ? 'Hidden' : 'Partly hidden';
  const lowest =
    leastVisible === null
      ? ''
      : ` An aircraft would show here from ${format.fine(Math.max(0, leastVisible - wheels))} above these wheels.`;
  const help =
    raise < 60
      ? ` Standing ${format.fine(raise)} higher would clear it.`
      : ' No ladder or deck would clear it: move aside.';
  return `${state} by ${by}, ${format.length(first.at)} from you.${lowest}${help}`;
}

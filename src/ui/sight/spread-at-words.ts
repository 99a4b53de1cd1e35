import type { SpreadAt } from '../../figures/flown/as-flown';
import type { Formats } from '../formats';

/** How high flights pass about the path's aircraft: "Of 24 recorded flights eight in ten pass between 12 m below and 20 m above this path here." */
export function spreadAtWords(
  { flights, up: [low, , high] }: SpreadAt,
  { length }: Pick<Formats, 'length'>,
): string {
  const side = (m: number) => `${length(Math.abs(m))} ${m < 0 ? 'below' : 'above'}`;
  return `Of ${flights} recorded flights eight in ten pass between ${side(low)} and ${side(high)} this path here.`;
}

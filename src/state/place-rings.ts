import { spotFigures } from '../figures/spot-figures';
import type { SpotFigures } from '../figures/types';
import type { StandingSpot } from '../survey/schema/standing-spot';
import { spotThere } from '../figures/spot/spot-there';
import type { Candidate } from '../sweep/candidates';
import type { Derived } from './derived.svelte';

/** A place that somebody looks at in the list, as a standing spot there would be at both moments. */
export function placeRings(
  { position, deck }: Pick<Candidate, 'position' | 'deck'>,
  { day, sights }: Pick<Derived, 'day' | 'sights'>,
): { readonly spot: StandingSpot; readonly a: SpotFigures; readonly b: SpotFigures } | null {
  const spot = spotThere(position, deck);
  const [a, b] = spotFigures(spot, sights.paths, sights.outlook, [day.instantA, day.instantB]);
  return a && b ? { spot, a, b } : null;
}

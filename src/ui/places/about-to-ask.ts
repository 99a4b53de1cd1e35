import { questionOf } from '../../state/place-question';
import type { PlaceSearch } from '../../ports/place-search';
import type { Figures } from '../contexts';

/** Has the sketch worked out that the view will open with: dawn to dusk, as it asks at first. */
export function aboutToAsk(figures: Figures, search: PlaceSearch): void {
  const { contents, terrain } = figures;
  search.foresee(contents, questionOf(figures, 'day'), terrain);
}

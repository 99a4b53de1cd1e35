import { keptInSight } from '../../map/kept-in-sight';
import type { MapSurface } from '../../map/map-surface';
import { surveyBounds } from '../../map/survey-bounds';
import type { Figures, Looking, MapSeat } from '../contexts';

export interface FramingNeeds {
  readonly surface: Pick<MapSurface, 'fit' | 'goTo' | 'project' | 'panBy'>;
  /** What the map fills. */
  readonly container: Pick<HTMLElement, 'clientWidth' | 'clientHeight'>;
  readonly figures: Pick<Figures, 'contents' | 'sights'>;
  readonly hand: Pick<Looking['hand'], 'busy'>;
  readonly seat: Pick<MapSeat, 'furniture'>;
}

/** Brings the survey, or what is selected in it, into what is to be seen of the map. */
export class Framing {
  readonly #needs: FramingNeeds;
  #size: { readonly width: number; readonly height: number };

  constructor(needs: FramingNeeds) {
    this.#needs = needs;
    this.#size = this.#sizeNow();
  }

  showAll(): void {
    const { surface, figures } = this.#needs;
    const bounds = surveyBounds(figures.contents);
    if (bounds) surface.fit(bounds, this.#legendWidth());
    else surface.goTo(figures.contents.site.reference, 13);
  }

  /** A view that opens at the foot, or a sheet, takes of the map: what is selected stays in sight. */
  resized(): void {
    const { surface, figures, hand } = this.#needs;
    const before = this.#size;
    this.#size = this.#sizeNow();
    const spot = figures.sights.selected?.spot;
    if (!spot || hand.busy) return;
    const away = keptInSight(surface.project(spot.position), before, this.#size);
    if (away) surface.panBy(away.right, away.down);
  }

  #sizeNow(): { readonly width: number; readonly height: number } {
    const { clientWidth: width, clientHeight: height } = this.#needs.container;
    return { width, height };
  }

  /** px that an open legend takes of a map that is wide enough to do without them. */
  #legendWidth(): number {
    const { seat, container } = this.#needs;
    // Folded, it is a button among others: places may lie under it.
    const legend = seat.furniture.find(({ x, width, height }) => x < width && height > width);
    const taken = legend ? legend.x + legend.width : 0;
    return taken < container.clientWidth / 3 ? taken : 0;
  }
}

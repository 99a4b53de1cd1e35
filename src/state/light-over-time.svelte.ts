import { keptViews } from '../figures/spot-figures';
import { dayRows, rankedRows, type DayRow } from '../figures/when/day-rows';
import { readRow, type RowReading } from '../figures/when/light-row';
import { yearLight, type YearLight } from '../figures/when/year-light';
import type { Derived } from './derived.svelte';
import type { View } from './view.svelte';

/** Light through the day and the year, for the views at the foot: computed only while one of them is looked at. */
export class LightOverTime {
  readonly #derived: Derived;
  readonly #view: View;
  /** The order before a drag began: rows do not change places under the pointer. */
  #order: readonly string[] = [];

  constructor(derived: Derived, view: View) {
    this.#derived = derived;
    this.#view = view;
  }

  readonly #rows = $derived.by(() => dayRows(this.#derived.contents, this.#derived.paths, this.#derived.day));

  /** The rows of the day, most worth first, and what is left out. */
  readonly today = $derived.by(() => {
    const today = rankedRows(this.#rows);
    if (this.#view.dragging === null) {
      this.#order = today.ranked.map(({ key }) => key);
      return today;
    }
    const place = ({ key }: DayRow) => {
      const at = this.#order.indexOf(key);
      return at === -1 ? this.#order.length : at;
    };
    return { ...today, ranked: today.ranked.toSorted((a, b) => place(a) - place(b)) };
  });

  /** The best picture of a row at an instant. */
  reading({ view, spot }: DayRow, instant: number): RowReading {
    return readRow(view, spot.position, instant);
  }

  /** A year of one spot and path (keys); null where the survey has no such. */
  year(spotId: string, pathKey: string): YearLight | null {
    const { contents, paths, date, timeZone } = this.#derived;
    const spot = contents.spots.find(({ id }) => id === spotId);
    const i = paths.findIndex(({ ref }) => ref.path === pathKey);
    const view = spot && keptViews(spot, paths, contents, this.#derived.day.from)[i];
    return view ? yearLight(view, spot.position, date, timeZone) : null;
  }
}

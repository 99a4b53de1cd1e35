import { dayRows, rankedRows, type DayRow } from '../figures/when/day-rows';
import { readRow, type RowReading } from '../figures/when/light-row';
import { yearLight, type YearLight } from '../figures/when/year-light';
import type { Derived } from './derived.svelte';
import type { View } from './view.svelte';

/** Light through the day and the year, for the views at the foot: computed only while one of them is looked at. */
export class LightOverTime {
  readonly #figures: Pick<Derived, 'contents' | 'day' | 'sights' | 'terrain'>;
  readonly #view: Pick<View, 'selection' | 'hand' | 'foot'>;
  /** The order before a drag began: rows do not change places under the pointer. */
  #order: readonly string[] = [];

  constructor(
    figures: Pick<Derived, 'contents' | 'day' | 'sights' | 'terrain'>,
    view: Pick<View, 'selection' | 'hand' | 'foot'>,
  ) {
    this.#figures = figures;
    this.#view = view;
  }

  readonly #rows = $derived.by(() =>
    dayRows(
      this.#figures.contents,
      this.#figures.sights.paths,
      this.#figures.day.span,
      this.#figures.terrain,
    ),
  );

  /** The rows of the day, most worth first, and what is left out. */
  readonly today = $derived.by(() => {
    const today = rankedRows(this.#rows);
    if (this.#view.hand.dragging === null) {
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

  /** The row that the year is of: the chosen one, else that of the selected spot which is worth most, else the first. */
  readonly chosen = $derived.by((): DayRow | null => {
    const { yearOf } = this.#view.foot;
    const { id: selected } = this.#view.selection;
    const usable = this.#rows.filter(({ view }) => view.usable);
    return (
      usable.find(({ spot, path }) => spot.id === yearOf?.spot && path.ref.path === yearOf.path) ??
      this.today.ranked.find(({ spot }) => spot.id === selected) ??
      this.today.ranked[0] ??
      null
    );
  });

  #lastYear: YearLight | null = null;
  /** A year of the chosen row; while something is dragged the last one stands, since a year takes longer than a frame. */
  readonly year = $derived.by((): YearLight | null => {
    const { chosen } = this;
    if (this.#view.hand.dragging !== null && this.#lastYear) return this.#lastYear;
    const { contents, terrain } = this.#figures;
    const { date, timeZone } = this.#figures.day;
    return (this.#lastYear =
      chosen && yearLight(contents, chosen.spot, chosen.path, date, timeZone, terrain));
  });

  /** Rows that can be chosen for the year, in the survey's order. */
  readonly choices = $derived.by(() => this.#rows.filter(({ view }) => view.usable));
}

import { dueOn } from '../figures/movements/due-on';
import { MovementLooks, type MovementFigures } from '../figures/movements/movement-figures';
import type { Derived } from './derived.svelte';
import type { View } from './view.svelte';

/** What is due on the day that is shown, with its figures: computed only while somebody looks at it. */
export class DayMovements {
  readonly #derived: Derived;
  readonly #view: View;

  constructor(derived: Derived, view: View) {
    this.#derived = derived;
    this.#view = view;
  }

  /** What is due, without figures: cheap. */
  readonly due = $derived.by(() =>
    dueOn(this.#derived.contents.movements, this.#derived.date, this.#derived.timeZone),
  );
  readonly onOtherDays = $derived.by(() => this.#derived.contents.movements.length - this.due.length);

  #last: readonly MovementFigures[] | null = null;
  /** While something is dragged the last figures stand: each movement looks from every spot. */
  readonly figures = $derived.by((): readonly MovementFigures[] => {
    if (this.#view.dragging !== null && this.#last) return this.#last;
    const looks = new MovementLooks(this.#derived.contents, this.#derived.inUse, this.#derived.terrain);
    return (this.#last = this.due.map(({ movement, instant }) => looks.figures(movement, instant)));
  });
}

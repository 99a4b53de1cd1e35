import { dueOn } from '../figures/movements/due-on';
import { MovementLooks, type MovementFigures } from '../figures/movements/movement-figures';
import type { Derived } from './derived.svelte';
import type { Hand } from './view.svelte';

/** What is due on the day that is shown, with its figures: computed only while somebody looks at it. */
export class DayMovements {
  readonly #figures: Pick<Derived, 'contents' | 'day' | 'flow' | 'terrain'>;
  readonly #hand: Pick<Hand, 'dragging'>;

  constructor(figures: Pick<Derived, 'contents' | 'day' | 'flow' | 'terrain'>, hand: Pick<Hand, 'dragging'>) {
    this.#figures = figures;
    this.#hand = hand;
  }

  /** What is due, without figures: cheap. */
  readonly due = $derived.by(() =>
    dueOn(this.#figures.contents.movements, this.#figures.day.date, this.#figures.day.timeZone),
  );
  readonly onOtherDays = $derived.by(() => this.#figures.contents.movements.length - this.due.length);

  #last: readonly MovementFigures[] | null = null;
  /** While something is dragged the last figures stand: each movement looks from every spot. */
  readonly figures = $derived.by((): readonly MovementFigures[] => {
    if (this.#hand.dragging !== null && this.#last) return this.#last;
    const looks = new MovementLooks(this.#figures.contents, this.#figures.flow.inUse, this.#figures.terrain);
    return (this.#last = this.due.map(({ movement, instant }) => looks.figures(movement, instant)));
  });
}

import type { Derived } from '../../state/derived.svelte';
import { partOfDay, type Day } from '../../time/day-share';

/**
 * The part of the day that a strip shows: from first to last light, and as far as the moments lie. While something on the
 * strip is held it stays as it was, so that nothing slides under the pointer.
 */
export class LightSpan {
  readonly #figures: Pick<Derived, 'day' | 'light'>;
  #held = $state.raw<Day | null>(null);

  constructor(figures: Pick<Derived, 'day' | 'light'>) {
    this.#figures = figures;
  }

  readonly #wanted = $derived.by((): Day => {
    const { span, instantA, instantB } = this.#figures.day;
    const light = this.#figures.light.sky.filter(({ value }) => value !== 'night');
    return partOfDay(span, light, [instantA, instantB]);
  });

  get now(): Day {
    return this.#held ?? this.#wanted;
  }
  hold(): void {
    this.#held = this.#wanted;
  }
  release(): void {
    this.#held = null;
  }
}

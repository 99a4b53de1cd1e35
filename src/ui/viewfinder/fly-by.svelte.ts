import type { Path } from '../../figures/traffic/paths';
import type { Viewfinder } from '../../state/view.svelte';
import { flown } from './fly';

/** Lets the aircraft of the viewfinder fly along its path in real time; by the second where motion is not wanted. */
export class FlyBy {
  readonly still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  readonly #viewfinder: Viewfinder;
  readonly #path: () => Path | null;
  #flying = $state.raw(false);

  /** Made while a component is, since it stops with it. */
  constructor(viewfinder: Viewfinder, path: () => Path | null) {
    this.#viewfinder = viewfinder;
    this.#path = path;
    $effect(() => {
      const samples = this.#path()?.samples;
      if (!this.#flying || !samples) return;
      let before = performance.now();
      let next = requestAnimationFrame(function step(now: number) {
        const from = viewfinder.target;
        if (!from) return;
        const at = flown(samples, from.at, (now - before) / 1000);
        before = now;
        viewfinder.target = { ...from, at };
        if (at >= samples.count - 1) stop();
        else next = requestAnimationFrame(step);
      });
      const stop = () => (this.#flying = false);
      return () => cancelAnimationFrame(next);
    });
  }

  get flying(): boolean {
    return this.#flying;
  }

  /** Starts, or stops; from the end it starts anew. */
  toggle(): void {
    const samples = this.#path()?.samples;
    const at = this.#viewfinder.target?.at;
    if (!samples || at === undefined) return;
    const atEnd = at >= samples.count - 1;
    if (this.still) this.#show(atEnd ? 0 : flown(samples, at, 1));
    else {
      if (atEnd && !this.#flying) this.#show(0);
      this.#flying = !this.#flying;
    }
  }

  /** Shows a sample of the path and stays there. */
  goTo(at: number): void {
    this.#flying = false;
    this.#show(at);
  }

  #show(at: number): void {
    const { target } = this.#viewfinder;
    if (target) this.#viewfinder.target = { ...target, at };
  }
}

import { learning, type Learned } from '../figures/flown/learn';
import { whatToTake } from '../figures/flown/what-to-take';
import type { Contents } from '../survey/contents';
import type { Derived } from './derived.svelte';
import { Turns } from './turns';
import type { Hand } from './view.svelte';

/** ms of learning in one go, so that the page keeps answering: hundreds of flights take a second. */
const slice = 10;

/** What the recorded flights teach, for the view at the foot: learned while it is looked at, in slices between frames. */
export class FlownFigures {
  readonly #figures: Pick<Derived, 'contents'>;
  readonly #hand: Pick<Hand, 'dragging'>;
  readonly #turns = new Turns();

  constructor(figures: Pick<Derived, 'contents'>, hand: Pick<Hand, 'dragging'>) {
    this.#figures = figures;
    this.#hand = hand;
  }

  /** Null until it is known; what was learned before stays while something newer is learned. */
  learned = $state.raw<Learned | null>(null);
  /** Share of the flights that are done, null when nothing is under way. */
  progress = $state.raw<number | null>(null);

  readonly #runways = $derived.by(() => this.#figures.contents.runways);
  readonly #flights = $derived.by(() => this.#figures.contents.flightPaths);
  readonly #elevation = $derived.by(() => this.#figures.contents.site.elevation);
  readonly recorded = $derived.by(() => this.#flights.filter(({ source }) => source !== 'drawn').length);
  readonly take = $derived.by(() => this.learned && whatToTake(this.#figures.contents, this.learned));

  /** To be called in an effect: follows runways, flights and the field's elevation, but not while something is dragged. */
  follow(): () => void {
    const runways = this.#runways;
    const flightPaths = this.#flights;
    const elevation = this.#elevation;
    if (this.#hand.dragging === null)
      void this.#learn({ runways, flightPaths, site: { ...this.#figures.contents.site, elevation } });
    return () => void this.#turns.begin();
  }

  async #learn(given: Pick<Contents, 'site' | 'runways' | 'flightPaths'>): Promise<void> {
    const isLast = this.#turns.begin();
    const steps = learning(given);
    let since = performance.now();
    for (;;) {
      const step = steps.next();
      if (step.done) {
        this.learned = step.value;
        this.progress = null;
        return;
      }
      if (performance.now() - since < slice) continue;
      this.progress = step.value;
      await new Promise((go) => setTimeout(go));
      if (!isLast()) return;
      since = performance.now();
    }
  }
}

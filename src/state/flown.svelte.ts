import type { Learned } from '../figures/flown/learn';
import { isRecorded } from '../figures/flown/packed-flights';
import { grounded } from '../figures/sight/grounded';
import { whatToTake } from '../figures/flown/what-to-take';
import type { Contents } from '../survey/contents';
import type { Derived } from './derived.svelte';
import { Turns } from './turns';
import type { Hand } from './view.svelte';

/** Learns away from the page, one question at a time: a newer one, or `cancel`, makes the one before answer null. */
export interface Learner {
  learn(
    given: Pick<Contents, 'site' | 'runways' | 'flightPaths'>,
    progress: (share: number) => void,
  ): Promise<Learned | null>;
  cancel(): void;
  close(): void;
}

/** What the recorded flights teach, for the views at the foot: learned while one of them is looked at. */
export class FlownFigures {
  readonly #figures: Pick<Derived, 'contents' | 'terrain'>;
  readonly #hand: Pick<Hand, 'dragging'>;
  readonly #load: () => Promise<Learner>;
  readonly #turns = new Turns();
  #learner: Learner | null = null;

  constructor(
    figures: Pick<Derived, 'contents' | 'terrain'>,
    hand: Pick<Hand, 'dragging'>,
    load: () => Promise<Learner>,
  ) {
    this.#figures = figures;
    this.#hand = hand;
    this.#load = load;
  }

  /** Null until it is known; what was learned before stays while something newer is learned. */
  learned = $state.raw<Learned | null>(null);
  /** Share of the flights that are done, null when nothing is under way. */
  progress = $state.raw<number | null>(null);
  /** Why nothing could be learned, in words. */
  trouble = $state.raw<string | null>(null);

  /** Ends without a stated height lie on the terrain: what flew over them is told above that. */
  readonly #field = $derived.by(() => grounded(this.#figures.contents, this.#figures.terrain));
  readonly #runways = $derived.by(() => this.#field.runways);
  readonly #flights = $derived.by(() => this.#figures.contents.flightPaths);
  readonly #elevation = $derived.by(() => this.#field.site.elevation);
  readonly recorded = $derived.by(() => this.#flights.filter(isRecorded).length);
  readonly take = $derived.by(() => this.learned && whatToTake(this.#figures.contents, this.learned));

  /**
   * To be called in an effect: follows runways, flights and the field's elevation, but not while something is dragged.
   * What it returns ends what is under way.
   */
  follow(): () => void {
    const runways = this.#runways;
    const flightPaths = this.#flights;
    const elevation = this.#elevation;
    if (this.#hand.dragging === null)
      void this.#learn({ runways, flightPaths, site: { ...this.#figures.contents.site, elevation } });
    return () => {
      this.#turns.begin();
      this.#learner?.cancel();
    };
  }

  /** Lets the worker go; nothing is learned after it. */
  close(): void {
    this.#turns.begin();
    this.#learner?.close();
  }

  async #learn(given: Parameters<Learner['learn']>[0]): Promise<void> {
    const isLast = this.#turns.begin();
    this.trouble = null;
    if (!given.flightPaths.some(isRecorded)) {
      this.learned = nothing;
      this.progress = null;
      return;
    }
    this.progress = 0;
    try {
      // A worker that comes when its view is left already is let go again.
      const learner = (this.#learner ??= await this.#load());
      if (!isLast()) return learner.cancel();
      const learned = await learner.learn(given, (share) => {
        if (isLast()) this.progress = share;
      });
      if (isLast() && learned) this.learned = learned;
    } catch (error) {
      if (isLast()) this.trouble = error instanceof Error ? error.message : String(error);
    } finally {
      if (isLast()) this.progress = null;
    }
  }
}

const nothing: Learned = { flown: [], few: [], uses: [], other: 0 };

import { learning } from '../figures/flown/learn';
import { unpacked } from '../figures/flown/packed-flights';
import type { RecordedFlight } from '../figures/flown/track';
import { Turns } from '../state/turns';
import type { LearningAnswer, LearningRequest } from './learning-messages';

/** ms of learning in one go: a cancel or a newer question is heard after as long at the latest. */
const slice = 20;

export interface LearningNeeds {
  readonly post: (answer: LearningAnswer) => void;
  /** Lets what has been sent in the meantime be heard. */
  readonly breathe: () => Promise<void>;
  /** ms of any clock. */
  readonly now: () => number;
}

/** What the worker that learns from flights does with what it is told. */
export class LearningDesk {
  readonly #needs: LearningNeeds;
  readonly #turns = new Turns();
  #flights: readonly RecordedFlight[] = [];

  constructor(needs: LearningNeeds) {
    this.#needs = needs;
  }

  async hear(message: LearningRequest): Promise<void> {
    const { post } = this.#needs;
    try {
      if (message.job === 'learn') return await this.#learn(message);
      this.#turns.begin();
      if (message.job === 'flights') this.#flights = unpacked(message.request);
    } catch (error) {
      post({ id: message.id, failed: error instanceof Error ? error.message : String(error) });
    }
  }

  async #learn({ id, request }: Extract<LearningRequest, { job: 'learn' }>): Promise<void> {
    const { post, breathe, now } = this.#needs;
    const isLast = this.#turns.begin();
    const steps = learning({ ...request, flights: this.#flights });
    let since = now();
    for (;;) {
      const step = steps.next();
      if (step.done) return post({ id, learned: step.value });
      if (now() - since < slice) continue;
      post({ id, progress: step.value });
      await breathe();
      if (!isLast()) return post({ id, cancelled: true });
      since = now();
    }
  }
}

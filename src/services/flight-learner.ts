import type { Learned } from '../figures/flown/learn';
import { isRecorded, packing } from '../figures/flown/packed-flights';
import type { Learner } from '../state/flown.svelte';
import { Turns } from '../state/turns';
import type { FlightPath } from '../survey/schema/places';
import type { LearningAnswer, LearningRequest } from './learning-messages';

/** A worker, as far as one is needed here: a double stands in for it in tests. */
export interface LearningHand {
  postMessage(request: LearningRequest, transfer: Transferable[]): void;
  onmessage: ((event: { readonly data: LearningAnswer }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

/** ms of packing flights in one go: half of a frame. */
const slice = 8;

interface Waiting {
  readonly id: number;
  readonly progress: (share: number) => void;
  readonly resolve: (learned: Learned | null) => void;
  readonly reject: (error: Error) => void;
}

export interface LearnerNeeds {
  readonly make: () => LearningHand;
  /** Lets the page answer for a moment. */
  readonly breathe: () => Promise<unknown>;
  /** ms of any clock. */
  readonly now: () => number;
}

/**
 * Has a worker learn what recorded flights teach, one question at a time: a newer one, or `cancel`, makes the one before
 * answer null at once, wherever its worker has got to. The worker is told flights only when they are others than the last.
 */
export class FlightLearner implements Learner {
  readonly #needs: LearnerNeeds;
  readonly #turns = new Turns();
  #hand: LearningHand | null = null;
  #told: readonly FlightPath[] | null = null;
  #id = 0;
  #waiting: Waiting | null = null;

  constructor(needs: LearnerNeeds) {
    this.#needs = needs;
  }

  async learn(
    { site, runways, flightPaths }: Parameters<Learner['learn']>[0],
    progress: (share: number) => void,
  ): Promise<Learned | null> {
    this.cancel();
    const isLast = this.#turns.begin();
    if (this.#told !== flightPaths) {
      const packed = await this.#packed(flightPaths, isLast);
      // A newer question may have come in as the last flight was packed.
      if (!packed || !isLast()) return null;
      this.#told = flightPaths;
      const { counts, positions, heights, times } = packed;
      this.#send({ id: ++this.#id, job: 'flights', request: packed }, [
        counts.buffer,
        positions.buffer,
        heights.buffer,
        times.buffer,
      ]);
    }
    const id = ++this.#id;
    return new Promise((resolve, reject) => {
      this.#waiting = { id, progress, resolve, reject };
      this.#send({ id, job: 'learn', request: { site, runways } }, []);
    });
  }

  /** Ends what is under way; it answers null. */
  cancel(): void {
    this.#turns.begin();
    const waiting = this.#waiting;
    if (!waiting) return;
    this.#waiting = null;
    this.#send({ id: ++this.#id, job: 'cancel', request: null }, []);
    waiting.resolve(null);
  }

  close(): void {
    this.cancel();
    this.#letGo();
  }

  async #packed(flightPaths: readonly FlightPath[], isLast: () => boolean) {
    const { breathe, now } = this.#needs;
    const steps = packing(flightPaths.filter(isRecorded));
    let since = now();
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (now() - since < slice) continue;
      await breathe();
      if (!isLast()) return null;
      since = now();
    }
  }

  #send(request: LearningRequest, transfer: Transferable[]): void {
    this.#hand ??= this.#hired();
    this.#hand.postMessage(request, transfer);
  }

  #hired(): LearningHand {
    const hand = this.#needs.make();
    hand.onmessage = ({ data }) => this.#heard(data);
    hand.onerror = () => {
      const waiting = this.#waiting;
      this.#waiting = null;
      this.#letGo();
      waiting?.reject(new Error('the browser ended it, or it ran out of memory'));
    };
    return hand;
  }

  #letGo(): void {
    this.#hand?.terminate();
    this.#hand = null;
    this.#told = null;
  }

  #heard(answer: LearningAnswer): void {
    const waiting = this.#waiting;
    // What belongs to an older question.
    if (!waiting || waiting.id !== answer.id) {
      if ('failed' in answer) this.#fail(answer.failed);
      return;
    }
    if ('progress' in answer) return waiting.progress(answer.progress);
    this.#waiting = null;
    if ('learned' in answer) waiting.resolve(answer.learned);
    else if ('failed' in answer) waiting.reject(new Error(answer.failed));
    else waiting.resolve(null);
  }

  /** Flights that did not arrive: what is asked of them cannot be answered. */
  #fail(reason: string): void {
    const waiting = this.#waiting;
    this.#waiting = null;
    this.#told = null;
    waiting?.reject(new Error(reason));
  }
}

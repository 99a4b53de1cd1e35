import type { Errand, ErrandAnswer, ErrandName, Errands } from './errands';

/** A worker, as far as it is needed here: a double stands in for it in tests. */
export interface ErrandHand {
  postMessage(errand: Errand): void;
  onmessage: ((event: { readonly data: ErrandAnswer }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

/**
 * Has errands run in a worker of their own, one at a time: a new one ends the one before, wherever that has got to, by
 * ending its worker.
 */
export class ErrandClient {
  readonly #make: () => ErrandHand;
  #hand: ErrandHand | null = null;
  #id = 0;
  #end: (() => void) | null = null;

  constructor(make: () => ErrandHand) {
    this.#make = make;
  }

  /** The answer; null where another one, or `cancel`, came in between. Rejects where it cannot be answered. */
  run<N extends ErrandName>(name: N, body: Errands[N][0]): Promise<Errands[N][1] | null> {
    this.cancel();
    const id = ++this.#id;
    const hand = (this.#hand ??= this.#make());
    return new Promise((resolve, reject) => {
      this.#end = () => resolve(null);
      const over = () => {
        this.#end = null;
        hand.onmessage = hand.onerror = null;
      };
      hand.onmessage = ({ data }) => {
        if (data.id !== id) return;
        over();
        if (data.name === 'failed') reject(new Error(data.body));
        else resolve(data.body);
      };
      hand.onerror = () => {
        over();
        this.#hand = null;
        hand.terminate();
        reject(new Error('the browser ended it, or it ran out of memory'));
      };
      hand.postMessage({ id, name, body } as Errand);
    });
  }

  /** Ends what is under way; it answers null. */
  cancel(): void {
    const end = this.#end;
    if (!end) return;
    this.#end = null;
    this.#hand?.terminate();
    this.#hand = null;
    end();
  }

  close(): void {
    this.cancel();
    this.#hand?.terminate();
    this.#hand = null;
  }
}

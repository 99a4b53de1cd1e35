import type { ErrandClient } from '../sweep/errand-client';
import type { ErrandName, Errands } from '../sweep/errands';
import { Turns } from './turns';

export type Runner = Pick<ErrandClient, 'run' | 'close'>;

/** One kind of errand: its last answer stays until the next one comes; a newer question ends the older one. */
export class PlaceErrand<N extends ErrandName> {
  #answer = $state.raw<Errands[N][1] | null>(null);
  #busy = $state.raw(false);
  #trouble = $state.raw<string | null>(null);
  readonly #name: N;
  readonly #runner: Runner;
  readonly #turns = new Turns();

  constructor(name: N, runner: Runner) {
    this.#name = name;
    this.#runner = runner;
  }

  get answer(): Errands[N][1] | null {
    return this.#answer;
  }
  get busy(): boolean {
    return this.#busy;
  }
  /** Why it could not be answered, in words. */
  get trouble(): string | null {
    return this.#trouble;
  }

  async ask(body: Errands[N][0]): Promise<void> {
    const isLast = this.#turns.begin();
    this.#busy = true;
    this.#trouble = null;
    try {
      const answer = await this.#runner.run(this.#name, body);
      if (isLast() && answer !== null) this.#answer = answer;
    } catch (error) {
      if (isLast()) this.#trouble = error instanceof Error ? error.message : String(error);
    } finally {
      if (isLast()) this.#busy = false;
    }
  }

  forget(): void {
    this.#turns.begin();
    this.#answer = null;
    this.#trouble = null;
    this.#busy = false;
  }

  close(): void {
    this.forget();
    this.#runner.close();
  }
}

import type { Answer, Jobs } from './messages';
import type { Candidate } from './types';

interface Waiting {
  readonly resolve: (response: Jobs[keyof Jobs][1]) => void;
  readonly reject: (error: Error) => void;
  readonly progress: ((share: number) => void) | null;
  /** Those that have come so far. */
  readonly candidates: Candidate[];
}

/** An import under way, in a worker of its own. `stop` ends it at once, and its promises never settle. */
export class ImportWorker {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #last = 0;

  constructor() {
    this.#worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    this.#worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => this.#heard(data));
    this.#worker.addEventListener('error', (event) => {
      const error = new Error(event.message || 'the worker could not be started');
      for (const { reject } of this.#waiting.values()) reject(error);
      this.#waiting.clear();
    });
  }

  ask<J extends keyof Jobs>(
    job: J,
    request: Jobs[J][0],
    progress?: (share: number) => void,
  ): Promise<Jobs[J][1]> {
    const id = ++this.#last;
    return new Promise<Jobs[J][1]>((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject, progress: progress ?? null, candidates: [] });
      this.#worker.postMessage({ id, job, request });
    });
  }

  stop(): void {
    this.#worker.terminate();
    this.#waiting.clear();
  }

  #heard(answer: Answer): void {
    const waiting = this.#waiting.get(answer.id);
    if (!waiting) return;
    if ('progress' in answer) return waiting.progress?.(answer.progress);
    if ('candidates' in answer) return void waiting.candidates.push(...answer.candidates);
    this.#waiting.delete(answer.id);
    if ('failed' in answer) return waiting.reject(new Error(answer.failed));
    const { response } = answer;
    const { candidates } = waiting;
    waiting.resolve(
      'candidates' in response
        ? { ...response, candidates: [...candidates, ...response.candidates] }
        : response,
    );
  }
}

import type { Answer, Jobs } from './messages';

interface Waiting {
  readonly job: keyof Jobs;
  readonly resolve: (response: Jobs[keyof Jobs][1]) => void;
  readonly reject: (error: Error) => void;
  readonly progress: ((share: number) => void) | null;
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
      this.#waiting.set(id, {
        job,
        resolve: resolve,
        reject,
        progress: progress ?? null,
      });
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
    this.#waiting.delete(answer.id);
    // A newer question of the same kind makes this answer late: nobody looks at it any more.
    if ('failed' in answer) waiting.reject(new Error(answer.failed));
    else waiting.resolve(answer.response);
  }
}

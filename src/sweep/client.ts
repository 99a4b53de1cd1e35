import type { Contents } from '../survey/contents';
import type { ElevationGrid } from '../figures/sight/terrain';
import { neededOf } from './needed';
import type { MessageName, Request, Response } from './messages';
import { planSweep, type Planned, type SweepAsked } from './plan';
import { buffersOf } from './sweep';
import { Run, type Question, type Told } from './run';

/** A worker, as far as this room needs one: a double stands in for it in tests. */
export interface Hand {
  postMessage(request: Request, transfer: Transferable[]): void;
  onmessage: ((event: { readonly data: Response }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

interface Worker {
  readonly hand: Hand;
  /** What it has been told: undefined before there was anything. */
  terrain: ElevationGrid | null | undefined;
  contents: Contents | undefined;
  /** The question it was told, and the request it is at: null when idle. */
  question: number;
  at: { readonly id: number; readonly question: number; readonly name: MessageName } | null;
}

/** At something that takes longer than a later question is to wait: a list of places takes a second. */
const isLong = ({ at }: Worker): boolean => at?.name === 'candidates';

/**
 * Asks where to stand: one question at a time, over as many workers as the machine has cores, coarse first. A new question
 * or `cancel` ends the one before; what still comes of that is dropped. Workers are made with the first question, or by `warm`.
 */
export class SweepClient {
  readonly #make: () => Hand;
  readonly #cores: number;
  #workers: Worker[] = [];
  #question = 0;
  #id = 0;
  #run: Run | null = null;

  constructor(make: () => Hand, cores: number) {
    this.#make = make;
    this.#cores = Math.max(1, cores);
  }

  /** Has the workers made and their program fetched before there is a question. */
  warm(count = this.#cores): void {
    while (this.#workers.length < count) this.#workers.push(this.#hired());
  }

  /**
   * Somebody is about to ask this: its sketch is worked out meanwhile, and nothing is told before they do. A question that is
   * asked already goes on.
   */
  prepare(contents: Contents, asked: SweepAsked, terrain: ElevationGrid | null): void {
    const question = { contents, asked, terrain };
    if (this.#run && (this.#run.isBegun || this.#run.isOf(question))) return;
    this.#start(question);
  }

  /** Begins a question. What cannot be asked is told at once; else `told` hears of every step, the last one with the places. */
  ask(contents: Contents, asked: SweepAsked, terrain: ElevationGrid | null, told: Told): Planned {
    const question = { contents, asked, terrain };
    const prepared = this.#run && !this.#run.isBegun && this.#run.isOf(question) ? this.#run : null;
    if (!prepared) {
      const planned = this.#start(question);
      if (!planned.ok) return planned;
    }
    const run = this.#run as Run;
    this.warm();
    run.begin(told);
    for (const worker of this.#workers) this.#next(worker);
    return { ok: true, plan: run.plan };
  }

  #start(question: Question): Planned {
    this.cancel();
    const planned = planSweep(question.contents, question.asked, question.terrain);
    if (!planned.ok) return planned;
    this.#run = new Run(planned.plan, question);
    // A sketch is one worker's; what cannot be asked takes none.
    this.warm(1);
    for (const worker of this.#workers) this.#next(worker);
    return planned;
  }

  /** Ends the question at hand: nothing more is told of it. Cells are soon done; who is at a list of places is let go. */
  cancel(): void {
    this.#question++;
    this.#run = null;
    const [long, short] = [this.#workers.filter(isLong), this.#workers.filter((worker) => !isLong(worker))];
    for (const { hand } of long) hand.terminate();
    this.#workers = short;
  }

  /** Lets the workers go. */
  close(): void {
    this.cancel();
    for (const { hand } of this.#workers) hand.terminate();
    this.#workers = [];
  }

  #hired(): Worker {
    const worker: Worker = {
      hand: this.#make(),
      terrain: undefined,
      contents: undefined,
      question: -1,
      at: null,
    };
    worker.hand.onmessage = ({ data }) => this.#heard(worker, data);
    worker.hand.onerror = () => {
      this.#run?.fail('the search stopped: the browser ended it, or it ran out of memory');
      this.close();
    };
    return worker;
  }

  /** Gives an idle worker what is next. */
  #next(worker: Worker): void {
    const run = this.#run;
    if (!run || worker.at !== null) return;
    const question = this.#question;
    if (worker.question !== question) {
      // In this order they are read; only the request that answers with work is waited for. What it knows it is not told again.
      const { asked, terrain } = run.question;
      const contents = neededOf(run.question.contents, asked);
      const tell = (request: Pick<Request, 'name' | 'body'>) =>
        worker.hand.postMessage({ id: ++this.#id, question, ...request } as Request, []);
      if (worker.terrain !== terrain) tell({ name: 'terrain', body: terrain });
      if (worker.contents !== contents) tell({ name: 'survey', body: contents });
      tell({ name: 'ask', body: asked });
      worker.terrain = terrain;
      worker.contents = contents;
      worker.question = question;
    }
    if (run.toSketch())
      return this.#wait(worker, { id: ++this.#id, question, name: 'sketch', body: null }, []);
    const figures = run.toPropose(this.#id + 1);
    if (figures) {
      const request: Request = { id: ++this.#id, question, name: 'candidates', body: { figures } };
      return this.#wait(worker, request, buffersOf(figures));
    }
    const cells = run.nextChunk();
    if (cells)
      this.#wait(worker, { id: ++this.#id, question, name: 'cells', body: { cells } }, [cells.buffer]);
  }

  #wait(worker: Worker, request: Request, transfer: Transferable[]): void {
    worker.at = { id: request.id, question: request.question, name: request.name };
    worker.hand.postMessage(request, transfer);
  }

  #heard(worker: Worker, response: Response): void {
    const isAwaited = worker.at?.id === response.id;
    const isOld = worker.at !== null && worker.at.question !== this.#question;
    if (isAwaited) worker.at = null;
    const run = this.#run;
    if (run && response.name === 'failed' && !isOld) {
      run.fail(response.body);
      return this.cancel();
    }
    if (run && isAwaited && !isOld) {
      if (response.name === 'sketch') run.sketch(response.body.figures);
      else if (response.name === 'cells') run.take(response.body.figures, response.body.took);
      else if (response.name === 'candidates') run.propose(response.id, response.body);
    }
    if (isAwaited) for (const each of this.#workers) this.#next(each);
  }
}

import type { Contents } from '../survey/contents';
import type { ElevationGrid } from '../figures/sight/terrain';
import { candidatesOf } from './candidates';
import type { Request, Response } from './messages';
import { planSweep, type SweepAsked } from './plan';
import { sketchOf } from './sketch';
import { buffersOf, Sweep } from './sweep';

/** What a worker does: one question at a time, request by request. `now`: ms of any clock. */
export class Answering {
  readonly #now: () => number;
  #terrain: ElevationGrid | null = null;
  #contents: Contents | null = null;
  #question = -1;
  #sweep: Sweep | null = null;
  /** Survey, terrain and question, as text, that it is of. */
  #sweepOf: readonly unknown[] = [];

  constructor(now: () => number) {
    this.#now = now;
  }

  answer(request: Request): { readonly response: Response; readonly transfer: ArrayBuffer[] } {
    const { id, name } = request;
    try {
      return this.#answered(request);
    } catch (error) {
      return { response: { id, name: 'failed', body: `${name}: ${String(error)}` }, transfer: [] };
    }
  }

  /** Makes a question ready, unless it is the one before; what is wrong with it, else null. */
  #take(asked: SweepAsked): string | null {
    const contents = this.#contents;
    if (!contents) return 'the question came before its survey';
    const of = [contents, this.#terrain, JSON.stringify(asked)];
    if (this.#sweep && of.every((part, i) => part === this.#sweepOf[i])) return null;
    const planned = planSweep(contents, asked, this.#terrain);
    if (!planned.ok) return planned.reason;
    this.#sweep = new Sweep(contents, planned.plan, this.#terrain);
    this.#sweepOf = of;
    return null;
  }

  #answered(request: Request): { readonly response: Response; readonly transfer: ArrayBuffer[] } {
    const { id, question } = request;
    const plain = (response: Response) => ({ response, transfer: [] });
    if (request.name === 'terrain') {
      this.#terrain = request.body;
      return plain({ id, name: 'terrain', body: null });
    }
    if (request.name === 'survey') {
      this.#contents = request.body;
      return plain({ id, name: 'survey', body: null });
    }
    if (request.name === 'ask') {
      const trouble = this.#take(request.body);
      if (trouble !== null) return plain({ id, name: 'failed', body: trouble });
      this.#question = question;
      return plain({ id, name: 'ask', body: null });
    }
    const sweep = this.#sweep;
    if (!sweep || question !== this.#question)
      return plain({ id, name: 'cancelled', body: 'another question came in between' });
    if (request.name === 'sketch') {
      const figures = sketchOf(sweep);
      return { response: { id, name: 'sketch', body: { figures } }, transfer: buffersOf(figures) };
    }
    if (request.name === 'candidates')
      return plain({ id, name: 'candidates', body: candidatesOf(sweep, request.body.figures) });
    const from = this.#now();
    const figures = sweep.figuresOf(request.body.cells);
    const body = { figures, took: this.#now() - from };
    return { response: { id, name: 'cells', body }, transfer: buffersOf(figures) };
  }
}

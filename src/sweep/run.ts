import type { Contents } from '../survey/contents';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { Proposed } from './candidates';
import { cellsOfLevel, strides } from './levels';
import type { SweepAsked, SweepPlan } from './plan';
import { copyCell, emptyFigures, proposable, type CellFigures } from './sweep';

/** How far a question is answered. The figures are one and the same object all along: what is in it grows. */
export interface SweepProgress {
  readonly plan: SweepPlan;
  /** All cells of the area, row by row; those of which `stride` is not 0 are known. */
  readonly figures: CellFigures;
  /** Every how many cells a cell was among those looked at: what it stands for until a finer one comes; 0 for not yet. */
  readonly stride: Uint8Array;
  /** Cells to a side that one known cell stands for: 16, 8, 4, 2, 1; null before the first picture is complete. */
  readonly fineness: number | null;
  /** Whether there is a sketch, as if the ground were level and open, where the first picture is not complete yet. */
  readonly sketched: boolean;
  /** Share of the cells that are known, 0 to 1. */
  readonly share: number;
  /** The places to propose, where they are told: all along the way for what is known by then, and at the end. */
  readonly proposed: Proposed | null;
  /** Whether they come from some of the cells only: better ones may follow. */
  readonly provisional: boolean;
  /** What went wrong in a worker, in words; nothing more comes then. */
  readonly failed: string | null;
}

/** ms that a worker is to be busy with one request: the next question waits no longer than that. */
const busyMs = 20;
const firstChunk = 24;
const [leastChunk, mostChunk] = [4, 4096];
/** Cells to a side that one known cell stands for at most when places are proposed: of a coarser picture most lanes fall through. */
const coarsestProposed = 8;

/** Hears how far a question is answered. */
export type Told = (progress: SweepProgress) => void;

/** A question with all that it is asked about. */
export interface Question {
  readonly contents: Contents;
  readonly asked: SweepAsked;
  readonly terrain: ElevationGrid | null;
}

/** Whether two questions have one answer. */
const isSame = (a: Question, b: Question): boolean =>
  a.contents === b.contents && a.terrain === b.terrain && JSON.stringify(a.asked) === JSON.stringify(b.asked);

/**
 * One question under way: what is known of it, and what is to be looked at next. Before somebody listens (`begin`) there is no
 * more of it than the sketch.
 */
export class Run {
  readonly plan: SweepPlan;
  readonly question: Question;
  readonly figures: CellFigures;
  #told: Told | null = null;
  readonly #stride: Uint8Array;
  #level = 0;
  #cells: Int32Array;
  /** Of the level: cells given out, and cells that are known. */
  #given = 0;
  #known = 0;
  #allKnown = 0;
  #fineness: number | null = null;
  #chunk = firstChunk;
  #wantsSketch = true;
  #sketched = false;
  #wantsPlaces = false;
  /** The requests for places: the last that was sent, that of all cells, and the newest that was answered. */
  #asking: number | null = null;
  #final: number | null = null;
  #answered = -1;

  constructor(plan: SweepPlan, question: Question) {
    this.plan = plan;
    this.question = question;
    const all = plan.area.count ** 2;
    const cells = new Int32Array(all);
    for (let i = 0; i < all; i++) cells[i] = i;
    this.figures = emptyFigures(cells, plan.paths.length);
    this.#stride = new Uint8Array(all);
    this.#cells = cellsOfLevel(plan.area.count, 0);
  }

  /** Somebody listens: they hear of the sketch at once, if it is there. */
  begin(told: Told): void {
    this.#told = told;
    if (this.#sketched) this.#tell(null, null);
  }
  get isBegun(): boolean {
    return this.#told !== null;
  }
  isOf(question: Question): boolean {
    return isSame(this.question, question);
  }

  /** Whether a sketch is due: once, before all else. */
  toSketch(): boolean {
    const wants = this.#wantsSketch;
    this.#wantsSketch = false;
    return wants;
  }

  /** Drawn where nothing better is known yet; cells that are looked at come over it. */
  sketch(part: CellFigures): void {
    const { figures } = this;
    if (this.#fineness !== null) return;
    const stride = strides[0];
    for (let k = 0; k < part.cells.length; k++) {
      const at = part.cells[k] as number;
      if (this.#stride[at] !== 0) continue;
      copyCell(part, k, figures, at, this.plan.paths.length);
      this.#stride[at] = stride;
    }
    this.#sketched = true;
    this.#tell(null, null);
  }

  /** The next cells to look at; null when all of the level are given out. */
  nextChunk(): Int32Array<ArrayBuffer> | null {
    if (!this.isBegun || this.#given >= this.#cells.length) return null;
    const chunk = this.#cells.slice(this.#given, this.#given + this.#chunk);
    this.#given += chunk.length;
    return chunk;
  }

  /**
   * What to propose places from, when that is due; `id`: the request that it goes with. Of what is known before all is, one
   * list at a time is worked out; the last one waits for none.
   */
  toPropose(id: number): CellFigures | null {
    const isFinal = this.#cells.length === 0;
    if (!this.#wantsPlaces || (this.#asking !== null && !isFinal)) return null;
    this.#wantsPlaces = false;
    this.#asking = id;
    if (isFinal) this.#final = id;
    // A copy: what comes in later does not reach it, and all of a large area would take the page a while to hand over.
    return proposable(this.figures, this.plan.paths.length);
  }

  take(part: CellFigures, took: number): void {
    const { figures } = this;
    const count = this.plan.paths.length;
    const stride = strides[this.#level] as number;
    for (let k = 0; k < part.cells.length; k++) {
      const at = part.cells[k] as number;
      copyCell(part, k, figures, at, count);
      this.#stride[at] = stride;
    }
    this.#known += part.cells.length;
    this.#allKnown += part.cells.length;
    const wanted = (part.cells.length * busyMs) / Math.max(0.1, took);
    this.#chunk = Math.round(Math.max(leastChunk, Math.min(mostChunk, 2 * this.#chunk, wanted)));
    if (this.#known === this.#cells.length) this.#finishLevel();
    this.#tell(null, null);
  }

  propose(id: number, proposed: Proposed): void {
    if (id === this.#asking) this.#asking = null;
    // A list of fewer cells may be answered after a newer one.
    if (id < this.#answered) return;
    this.#answered = id;
    // That a coarse look finds nothing means nothing.
    if (id === this.#final || proposed.candidates.length > 0) this.#tell(proposed, null, id !== this.#final);
  }

  fail(reason: string): void {
    this.#tell(null, reason);
  }

  #finishLevel(): void {
    this.#fineness = strides[this.#level] as number;
    this.#known = 0;
    this.#given = 0;
    // A small area has levels without a cell of their own.
    while (++this.#level < strides.length) {
      this.#cells = cellsOfLevel(this.plan.area.count, this.#level);
      if (this.#cells.length > 0) {
        this.#wantsPlaces = this.#fineness <= coarsestProposed;
        return;
      }
    }
    this.#cells = new Int32Array(0);
    this.#wantsPlaces = true;
  }

  #tell(proposed: Proposed | null, failed: string | null, provisional = false): void {
    this.#told?.({
      plan: this.plan,
      figures: this.figures,
      stride: this.#stride,
      fineness: this.#fineness,
      sketched: this.#sketched,
      share: this.#allKnown / this.figures.cells.length,
      proposed,
      provisional,
      failed,
    });
  }
}

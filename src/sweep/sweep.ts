import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import { standingEyeHeight } from '../survey/schema/standing-spot';
import { mapped } from '../figures/geometry/earth';
import { outlookOf, type Outlook } from '../figures/outlook';
import { groundAt } from '../figures/sight/ground';
import type { ElevationGrid } from '../figures/sight/terrain';
import { cellPosition, centreOf, middleOf } from './area';
import { GroundPlan, type GroundClass } from './ground/ground-plan';
import { OpenHours } from './ground/open-hours';
import { Kernel } from './kernel/kernel';
import type { SweepPlan } from './plan';

export const groundCodes: readonly GroundClass[] = ['open', 'unknown', 'closed'];

/** What is known of the cells that were asked, in their order: arrays that pass from thread to thread. */
export interface CellFigures {
  readonly cells: Int32Array;
  /** Total at the cell's best instant, and the sum over all instants where some path is good, else no more than that. */
  readonly worth: Float64Array;
  readonly summedWorth: Float64Array;
  /** Needed focal length in mm of the best sample at the best instant; NaN where there is none. */
  readonly focal: Float64Array;
  /** Its factor of light at the best instant. */
  readonly light: Float64Array;
  /** Instants at which one may be there and some path is good, and at which each is: cells x paths. */
  readonly good: Uint16Array;
  readonly goodByPath: Uint16Array;
  /** Index in `groundCodes`. */
  readonly ground: Uint8Array;
}

export const emptyFigures = (cells: Int32Array, paths: number): CellFigures => ({
  cells,
  worth: new Float64Array(cells.length),
  summedWorth: new Float64Array(cells.length),
  focal: new Float64Array(cells.length).fill(NaN),
  light: new Float64Array(cells.length),
  good: new Uint16Array(cells.length),
  goodByPath: new Uint16Array(cells.length * paths),
  ground: new Uint8Array(cells.length),
});

/** One cell's figures, place `k` of some -> place `at` of others, of the same paths; which cell it is stays the others' own. */
export function copyCell(from: CellFigures, k: number, to: CellFigures, at: number, paths: number): void {
  to.worth[at] = from.worth[k] as number;
  to.summedWorth[at] = from.summedWorth[k] as number;
  to.focal[at] = from.focal[k] as number;
  to.light[at] = from.light[k] as number;
  to.good[at] = from.good[k] as number;
  to.ground[at] = from.ground[k] as number;
  for (let p = 0; p < paths; p++) to.goodByPath[at * paths + p] = from.goodByPath[k * paths + p] as number;
}

export const buffersOf = (figures: CellFigures): ArrayBuffer[] =>
  Object.values(figures).map((list: CellFigure) => list.buffer as ArrayBuffer);

type CellFigure = CellFigures[keyof CellFigures];

/** Cells after which whoever listens hears again: some tenths of a second. */
const toldEvery = 512;

const closedCode = groundCodes.indexOf('closed');

/** Of cells those that may be proposed: some path is good there, and nobody is kept away. */
export function proposable(figures: CellFigures, paths: number): CellFigures {
  const { cells, ground, goodByPath } = figures;
  const kept = new Int32Array(cells.length);
  let count = 0;
  for (let k = 0; k < cells.length; k++) {
    if (ground[k] === closedCode) continue;
    let good = 0;
    for (let p = 0; p < paths; p++) good |= goodByPath[k * paths + p] as number;
    if (good > 0) kept[count++] = k;
  }
  const out = emptyFigures(new Int32Array(count), paths);
  for (let i = 0; i < count; i++) {
    const k = kept[i] as number;
    out.cells[i] = cells[k] as number;
    copyCell(figures, k, out, i, paths);
  }
  return out;
}

/** One question, ready to be answered cell by cell, in any order. Where somebody may stand comes with it. */
export class Sweep {
  readonly plan: SweepPlan;
  readonly contents: Contents;
  readonly outlook: Outlook;
  readonly ground: GroundPlan;
  /** Made when the first cell is looked at: tables of light take a while. */
  #made: Kernel | null = null;
  #hours: OpenHours | null = null;

  constructor(contents: Contents, plan: SweepPlan, terrain: ElevationGrid | null) {
    const { area, instants } = plan;
    this.plan = plan;
    this.contents = contents;
    this.outlook = outlookOf(contents, terrain);
    this.ground = new GroundPlan(contents, area, instants[0] ?? 0);
  }

  get #kernel(): Kernel {
    const { area, paths, instants } = this.plan;
    const { outlook } = this;
    return (this.#made ??= new Kernel({
      paths,
      outlook,
      instants,
      middle: centreOf(area),
      everyInstant: false,
    }));
  }

  /** When people are let in: nothing that a sketch asks. */
  get hours(): OpenHours {
    const { area, instants } = this.plan;
    return (this.#hours ??= new OpenHours(this.contents, area.frame, instants));
  }

  /** The figures of some cells; `told` hears now and then how many are done. */
  figuresOf(cells: Int32Array, told?: (done: number) => void): CellFigures {
    const { area, paths, instants } = this.plan;
    const out = emptyFigures(cells, paths.length);
    for (let k = 0; k < cells.length; k++) {
      if (told && k % toldEvery === 0) told(k);
      const index = cells[k] as number;
      const [x, y] = middleOf(area, index);
      out.ground[k] = groundCodes.indexOf(this.ground.ofCell(x, y).ground);
      const position = cellPosition(area, index);
      const eye = this.#eyeAt(position);
      const kernel = this.#kernel;
      kernel.at(position, eye);
      const best = bestInstant(kernel.worth);
      out.worth[k] = kernel.worth[best] as number;
      out.focal[k] = kernel.focal[best] as number;
      out.light[k] = kernel.light[best] as number;
      const open = this.hours.at(x, y);
      let [sum, good] = [0, 0];
      for (let t = 0; t < instants.length; t++) {
        sum += kernel.worth[t] as number;
        let any = 0;
        for (let p = 0; p < paths.length; p++) {
          const is = (kernel.good[p * instants.length + t] as number) & (open[t] as number);
          any |= is;
          out.goodByPath[k * paths.length + p] = (out.goodByPath[k * paths.length + p] as number) + is;
        }
        good += any;
      }
      out.summedWorth[k] = sum;
      out.good[k] = good;
    }
    return out;
  }

  #eyeAt(position: Position): number {
    return this.groundUnder(position).elevation + standingEyeHeight;
  }

  /** The kernel after looking from a position; its answers hold until the next look. */
  lookFrom(position: Position): Kernel {
    this.#kernel.at(position, this.#eyeAt(position));
    return this.#kernel;
  }

  /** Of the last look, from `position`: the path that is good for longest, else that of the best sample; -1 for none. */
  bestPath(position: Position): number {
    const { area, paths, instants } = this.plan;
    const { good, bestPath, worth } = this.#kernel;
    const open = this.hours.at(...mapped(area.frame, position));
    let [best, most] = [bestPath[bestInstant(worth)] as number, 0];
    for (let p = 0; p < paths.length; p++) {
      let count = 0;
      for (let t = 0; t < instants.length; t++)
        count += (good[p * instants.length + t] as number) & (open[t] as number);
      if (count > most) [best, most] = [p, count];
    }
    return best;
  }

  /** m above mean sea level of what one stands on: a deck's top, else the ground. `stated` where a spot there must say so. */
  groundUnder(position: Position): { readonly elevation: number; readonly stated: boolean } {
    const { runways, fieldElevation, around } = this.outlook;
    const deck = this.ground.deckAt(...mapped(this.plan.area.frame, position));
    const top = deck && around ? around.tops[around.obstacles.indexOf(deck)]?.top : undefined;
    if (top !== undefined) return { elevation: top, stated: true };
    return {
      elevation: groundAt(position, runways, fieldElevation, around?.terrain ?? null).elevation,
      stated: false,
    };
  }
}

/** The first instant of the highest total. */
export function bestInstant(worth: Float64Array): number {
  let best = 0;
  for (let t = 1; t < worth.length; t++) if ((worth[t] as number) > (worth[best] as number)) best = t;
  return best;
}

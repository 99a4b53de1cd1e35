import type { Surroundings } from '../figures/sight/surroundings';
import { pointsOfAircraft, type Targets } from '../figures/sight/targets';
import type { TopGrid } from '../figures/sight/top-grid';

/** m to a side of a block of places, and m from its middle to any of it. */
const side = 160;
const halfDiagonal = side * Math.SQRT1_2;
/** Parts of the way to a sample, each of the same length. */
export const parts = 15;
export const allParts = (1 << parts) - 1;
/** Blocks whose answers are kept: more than a row of them has in the largest area. */
const kept = 128;
/** m by which places of a block may stand lower than the first of them before all is asked anew. */
const lower = 1;
/** m that rounding, and the sag of a line within one part, come to at most. */
const slack = 0.05;
/** Radians by which a ray of the ground is off the line that is asked for, at most (`HorizonRays`: 4096 of them). */
const offRay = 0.001;
/** Set where a sample was asked: the parts of the way above which tops may stand, then those of the ground. */
const asked = 1 << 30;

/** The places of a block, and what is known for all of them. */
interface Block {
  column: number;
  row: number;
  /** m above mean sea level that no eye may be below. */
  floor: number;
  known: Int32Array;
}

/**
 * What is certain for all places of a block of 160 m at once: above which parts of the way to a sample neither tops nor ground
 * come near any of their sight lines. What is left is asked place by place, so the answers stay the same (test S122).
 */
export class Beams {
  readonly #around: Surroundings;
  readonly #tops: TopGrid;
  readonly #targets: readonly Targets[];
  /** Where the samples of each path begin. */
  readonly #first: Int32Array;
  readonly #blocks: (Block | undefined)[] = [];
  readonly #samples: number;
  #block: Block | null = null;

  constructor(around: Surroundings, tops: TopGrid, targets: readonly Targets[]) {
    this.#around = around;
    this.#tops = tops;
    this.#targets = targets;
    this.#first = new Int32Array(targets.length);
    let samples = 0;
    targets.forEach(({ count }, p) => {
      this.#first[p] = samples;
      samples += count;
    });
    this.#samples = samples;
  }

  /** Stands at (`x`, `y`, `eye`) of the site frame. */
  stand(x: number, y: number, eye: number): void {
    const [column, row] = [Math.floor(x / side), Math.floor(y / side)];
    const at = column & (kept - 1);
    const block = (this.#blocks[at] ??= {
      column: NaN,
      row: NaN,
      floor: NaN,
      known: new Int32Array(this.#samples),
    });
    const isSame = block.column === column && block.row === row;
    if (!isSame || eye < block.floor) {
      block.known.fill(0);
      block.column = column;
      block.row = row;
      block.floor = eye - lower;
    }
    this.#block = block;
  }

  /** The parts of the way to sample `i` of a path above which tops may stand: a bit each, the first next to the eye. */
  topParts(path: number, i: number): number {
    return this.#partsOf(path, i) & allParts;
  }

  /** Those above which the ground may rise. */
  groundParts(path: number, i: number): number {
    return (this.#partsOf(path, i) >> parts) & allParts;
  }

  #partsOf(path: number, i: number): number {
    const { known } = this.#block as Block;
    const at = (this.#first[path] as number) + i;
    if (known[at] === 0) known[at] = asked | this.#looked(this.#targets[path] as Targets, i);
    return known[at] as number;
  }

  #looked({ points }: Targets, i: number): number {
    const { column, row, floor } = this.#block as Block;
    const { terrain, sink } = this.#around;
    const k = 3 * pointsOfAircraft * i;
    const [cx, cy] = [(column + 0.5) * side, (row + 0.5) * side];
    // The centre stands for all points; `wide` m from it the others lie.
    const tx = points[k + 3] as number;
    const ty = points[k + 4] as number;
    let [wide, z] = [0, Infinity];
    for (let p = k; p < k + 3 * pointsOfAircraft; p += 3) {
      wide = Math.max(wide, Math.hypot((points[p] as number) - tx, (points[p + 1] as number) - ty));
      z = Math.min(z, points[p + 2] as number);
    }
    const most = Math.hypot(tx - cx, ty - cy) + halfDiagonal + wide;
    const sag = (sink * most * most) / 4 + slack;
    // The ground nearer than a step to the aircraft hides nothing.
    const groundTo = terrain ? 1 - terrain.step / most : 0;
    let found = 0;
    for (let part = 0; part < parts; part++) {
      const [from, to] = [part / parts, (part + 1) / parts];
      const low = Math.min(floor + (z - floor) * from, floor + (z - floor) * to) - sag;
      const room = (1 - from) * halfDiagonal + to * (wide + offRay * most);
      const [x0, y0] = [cx + from * (tx - cx), cy + from * (ty - cy)];
      const [x1, y1] = [cx + to * (tx - cx), cy + to * (ty - cy)];
      const [west, east] = [Math.min(x0, x1) - room, Math.max(x0, x1) + room];
      const [south, north] = [Math.min(y0, y1) - room, Math.max(y0, y1) + room];
      if (this.#tops.ceilingWithin(west, south, east, north) >= low) found |= 1 << part;
      if (terrain && from < groundTo && terrain.ceilingAlong(west, south, east, north) >= low)
        found |= 1 << (parts + part);
    }
    return found;
  }
}

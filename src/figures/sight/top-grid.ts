import { isWithin, perEdge } from './top-edges';
import { blocks, type Surroundings } from './surroundings';

/** m to a side of a square of the grid, unless that makes more than `mostSquares` to a side. */
const usualSquare = 40;
const mostSquares = 400;
/** m by which a square's highest top is raised: more than a sight line sags within one square, and than rounding takes. */
const slack = 0.01;

/**
 * The tops of obstacles in squares, shared by all eyes: for very many eyes that look along few lines each, where sorting
 * the tops round every eye (`TopRays`) would cost more than the lines. A line is held against the edges of the squares
 * that it crosses below their highest top, by the same sum as there: the answers are equal (test F1113).
 */
export class TopGrid {
  readonly #around: Surroundings;
  readonly #west: number;
  readonly #south: number;
  readonly #square: number;
  readonly #columns: number;
  readonly #rows: number;
  /** Where the edges of each square begin in `#listed`. */
  readonly #start: Int32Array;
  readonly #listed: Int32Array;
  /** East, north, top of either end, as the surroundings have them. */
  readonly #edges: Float64Array;
  readonly #owner: Int32Array;
  readonly #highest: Float64Array;
  /** m from an edge's top down to where one sees under it. */
  readonly #depth: Float64Array;
  /** The edges that were held against the line at hand already: a long one lies in many squares. */
  readonly #seen: Int32Array;
  #turn = 0;

  #does: Uint8Array = new Uint8Array(0);
  #x = 0;
  #y = 0;
  #eye = 0;
  /** The edge that hid the last line. */
  #hiddenBy = -1;
  /** 1 for what carries the eye. */
  readonly #carries: Uint8Array;
  readonly #carrying: number[] = [];

  constructor(around: Surroundings) {
    this.#around = around;
    const { tops } = around;
    let [west, south, east, north, count] = [Infinity, Infinity, -Infinity, -Infinity, 0];
    for (const top of tops) {
      west = Math.min(west, top.west);
      south = Math.min(south, top.south);
      east = Math.max(east, top.east);
      north = Math.max(north, top.north);
      count += top.count;
    }
    if (!(east >= west)) [west, south, east, north] = [0, 0, 0, 0];
    this.#west = west;
    this.#south = south;
    this.#square = Math.max(usualSquare, Math.max(east - west, north - south) / mostSquares);
    this.#columns = Math.floor((east - west) / this.#square) + 1;
    this.#rows = Math.floor((north - south) / this.#square) + 1;
    this.#edges = new Float64Array(count * perEdge);
    this.#owner = new Int32Array(count);
    this.#seen = new Int32Array(count);
    this.#depth = new Float64Array(count);
    this.#carries = new Uint8Array(tops.length);
    let e = 0;
    tops.forEach((top, owner) => {
      this.#edges.set(top.edges.subarray(0, top.count * perEdge), e * perEdge);
      this.#owner.fill(owner, e, e + top.count);
      this.#depth.fill(top.depth, e, e + top.count);
      e += top.count;
    });
    this.#start = new Int32Array(this.#columns * this.#rows + 1);
    this.#highest = new Float64Array(this.#columns * this.#rows).fill(-Infinity);
    for (let i = 0; i < count; i++) this.#squaresOf(i, (s) => (this.#start[s + 1] as number)++);
    for (let s = 1; s < this.#start.length; s++)
      this.#start[s] = (this.#start[s] as number) + (this.#start[s - 1] as number);
    this.#listed = new Int32Array(this.#start[this.#start.length - 1] as number);
    const next = this.#start.slice();
    for (let i = 0; i < count; i++) {
      const k = i * perEdge;
      const top = Math.max(this.#edges[k + 2] as number, this.#edges[k + 5] as number) + slack;
      this.#squaresOf(i, (s) => {
        this.#listed[next[s] as number] = i;
        (next[s] as number)++;
        if (top > (this.#highest[s] as number)) this.#highest[s] = top;
      });
    }
  }

  /** Stands at (`x`, `y`, `eye`) of the site frame. `does`: what each obstacle does (`standing`). */
  stand(does: Uint8Array, x: number, y: number, eye: number): void {
    this.#does = does;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    for (const i of this.#carrying) this.#carries[i] = 0;
    this.#carrying.length = 0;
    const { tops } = this.#around;
    // Whoever stands on a roof looks over its edge.
    for (const i of this.#around.near(x, y, x, y)) {
      const top = tops[i];
      if (!top || top.top > eye || !isWithin(top, x, y)) continue;
      this.#carries[i] = 1;
      this.#carrying.push(i);
    }
  }

  /** The edge that hid the last line that was hidden. */
  get hiddenBy(): number {
    return this.#hiddenBy;
  }

  /**
   * Whether an obstacle blocks the line towards (`dx`, `dy`), m from the eye, of a steepness (see `HorizonRays`): as far
   * as there, or without end.
   */
  hides(dx: number, dy: number, distance: number, steepness: number, endless: boolean): boolean {
    const { sink, highestTop } = this.#around;
    const room = highestTop + slack - this.#eye;
    if (room <= 0 && steepness >= 0) return false;
    const square = this.#square;
    // In squares from the south-west corner; along the line u goes from 0 at the eye to 1 at the target.
    const ex = (this.#x - this.#west) / square;
    const ey = (this.#y - this.#south) / square;
    const gx = dx / square;
    const gy = dy / square;
    let from = 0;
    let to = endless ? Infinity : 1;
    // Beyond where it has risen above the highest top it meets nothing.
    if (steepness > 0) to = Math.min(to, room / (steepness * distance));
    if (gx !== 0) {
      const [a, b] = [-ex / gx, (this.#columns - ex) / gx];
      from = Math.max(from, Math.min(a, b));
      to = Math.min(to, Math.max(a, b));
    } else if (ex < 0 || ex >= this.#columns) return false;
    if (gy !== 0) {
      const [a, b] = [-ey / gy, (this.#rows - ey) / gy];
      from = Math.max(from, Math.min(a, b));
      to = Math.min(to, Math.max(a, b));
    } else if (ey < 0 || ey >= this.#rows) return false;
    if (!(from <= to)) return false;
    let column = Math.max(0, Math.min(this.#columns - 1, Math.floor(ex + from * gx)));
    let row = Math.max(0, Math.min(this.#rows - 1, Math.floor(ey + from * gy)));
    const stepX = gx > 0 ? 1 : -1;
    const stepY = gy > 0 ? 1 : -1;
    const perX = gx !== 0 ? Math.abs(1 / gx) : Infinity;
    const perY = gy !== 0 ? Math.abs(1 / gy) : Infinity;
    let nextX = gx !== 0 ? (column + (gx > 0 ? 1 : 0) - ex) / gx : Infinity;
    let nextY = gy !== 0 ? (row + (gy > 0 ? 1 : 0) - ey) / gy : Infinity;
    const turn = ++this.#turn;
    for (;;) {
      const leaves = Math.min(nextX, nextY, to);
      const s = (row * this.#columns + column) | 0;
      const top = (this.#highest[s] as number) - this.#eye;
      if (top > -Infinity) {
        const a = from * distance;
        const b = leaves * distance;
        const low = Math.min(a * (steepness + sink * a), b * (steepness + sink * b));
        if (top >= low && this.#meets(s, turn, dx, dy, distance, steepness, endless)) return true;
      }
      if (leaves >= to) return false;
      from = leaves;
      if (nextX <= nextY) {
        column += stepX;
        nextX += perX;
        if (column < 0 || column >= this.#columns) return false;
      } else {
        row += stepY;
        nextY += perY;
        if (row < 0 || row >= this.#rows) return false;
      }
    }
  }

  /** The sum of `TopRays.meet`, for the edges of one square. */
  #meets(
    s: number,
    turn: number,
    east: number,
    north: number,
    distance: number,
    steepness: number,
    endless: boolean,
  ): boolean {
    const end = this.#start[s + 1] as number;
    for (let j = this.#start[s] as number; j < end; j++) {
      const e = this.#listed[j] as number;
      if (this.#seen[e] === turn) continue;
      this.#seen[e] = turn;
      if (!this.isHiddenBy(e, east, north, distance, steepness, endless)) continue;
      this.#hiddenBy = e;
      return true;
    }
    return false;
  }

  /** Whether edge `e` blocks a line: what hid it from a place before is likely to hide it again. */
  isHiddenBy(
    e: number,
    east: number,
    north: number,
    distance: number,
    steepness: number,
    endless: boolean,
  ): boolean {
    const edges = this.#edges;
    const { sink } = this.#around;
    const owner = this.#owner[e] as number;
    const doing = this.#does[owner] as number;
    if (doing !== blocks || this.#carries[owner] === 1) return false;
    const k = e * perEdge;
    const ax = (edges[k] as number) - this.#x;
    const ay = (edges[k + 1] as number) - this.#y;
    const bx = (edges[k + 3] as number) - this.#x - ax;
    const by = (edges[k + 4] as number) - this.#y - ay;
    const across = east * by - north * bx;
    if (across === 0) return false;
    const u = (ax * by - ay * bx) / across;
    if (!(u > 0) || (u >= 1 && !endless)) return false;
    const v = (ax * north - ay * east) / across;
    if (v < 0 || v > 1) return false;
    const out = u * distance;
    const low = (edges[k + 2] as number) - this.#eye;
    const top = low + v * ((edges[k + 5] as number) - this.#eye - low);
    if (top / out - sink * out < steepness) return false;
    // Under it one sees.
    return !((top - (this.#depth[e] as number)) / out - sink * out > steepness);
  }

  /** The squares that an edge passes through. */
  #squaresOf(e: number, each: (square: number) => void): void {
    const k = e * perEdge;
    const [columns, rows, square] = [this.#columns, this.#rows, this.#square];
    const at = (v: number, from: number, most: number) =>
      Math.max(0, Math.min(most - 1, Math.floor((v - from) / square)));
    const [ax, ay] = [this.#edges[k] as number, this.#edges[k + 1] as number];
    const [bx, by] = [this.#edges[k + 3] as number, this.#edges[k + 4] as number];
    const [c0, c1] = [at(Math.min(ax, bx), this.#west, columns), at(Math.max(ax, bx), this.#west, columns)];
    for (let c = c0; c <= c1; c++) {
      // The piece of the edge within this column, a millimetre wider.
      const span = bx - ax;
      const part = (x: number) => (span === 0 ? NaN : Math.max(0, Math.min(1, (x - ax) / span)));
      const left = this.#west + c * square - 1e-3;
      const [t0, t1] = [part(left), part(left + square + 2e-3)];
      const ys = Number.isNaN(t0) ? [ay, by] : [ay + t0 * (by - ay), ay + t1 * (by - ay)];
      const [r0, r1] = [
        at(Math.min(...ys) - 1e-3, this.#south, rows),
        at(Math.max(...ys) + 1e-3, this.#south, rows),
      ];
      for (let r = r0; r <= r1; r++) each(r * columns + c);
    }
  }
}

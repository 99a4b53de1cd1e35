import { isWithin, perEdge } from './top-edges';
import { blocks, mesh, open, type Surroundings } from './surroundings';
import { lineDistance, lineEast, lineNorth, lineSteepness, lineTurn, type Line } from './line';
import { turnOf } from './turn';

const bins = 1024;

/** What a sight line meets. `obstacle` and `mesh` are indices of the surroundings' obstacles, -1 for none. */
export interface Met {
  /** m to the first obstacle that blocks, Infinity for none. */
  distance: number;
  obstacle: number;
  /** The nearest mesh that is looked through. */
  mesh: number;
}

/**
 * The tops of obstacles round an eye, sorted by bearing (`turnOf`): a sight line is held against the few edges of its bearing,
 * exactly. Plain on purpose: this is the inner loop of a drag.
 */
export class TopRays {
  #x = 0;
  #y = 0;
  #eye = 0;
  #sink = 0;
  #count = 0;
  /** From the eye: east, north, top above the eye of either end; then the steepest that the edge can look. */
  #edges = new Float64Array(0);
  /** m from an edge's top down to where one sees under it. */
  #depth = new Float64Array(0);
  #owner = new Int32Array(0);
  #does = new Uint8Array(0);
  #first = new Int32Array(0);
  #last = new Int32Array(0);
  readonly #start = new Int32Array(bins + 1);
  readonly #steepest = new Float64Array(bins);
  #sorted = new Int32Array(0);

  /** Stands at (`x`, `y`, `eye`) among the given obstacles, of which `does` says what each does. */
  stand(
    { tops, sink }: Surroundings,
    near: readonly number[],
    does: Uint8Array,
    x: number,
    y: number,
    eye: number,
  ) {
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    this.#sink = sink;
    this.#count = 0;
    let needed = 0;
    for (const i of near) needed += tops[i]?.count ?? 0;
    if (this.#owner.length < needed) this.#grow(2 * needed);
    for (const i of near) {
      const top = tops[i];
      const doing = does[i] as number;
      if (!top || doing === open) continue;
      // Whoever stands on a roof looks over its edge: what carries the spot does not hide anything from it.
      const over = x >= top.west && x <= top.east && y >= top.south && y <= top.north && top.top <= eye;
      if (over && isWithin(top, x, y)) continue;
      for (let k = 0; k < top.count; k++) this.#take(top.edges, k * perEdge, top.depth, i, doing);
    }
    this.#sort();
  }

  /** Follows a sight line to its end, or to the sky. */
  meet(line: Line, endless: boolean, met: Met): void {
    met.distance = Infinity;
    met.obstacle = -1;
    met.mesh = -1;
    const steepness = line[lineSteepness] as number;
    const bin = Math.min(bins - 1, Math.floor(((line[lineTurn] as number) / 4) * bins));
    if ((this.#steepest[bin] as number) < steepness) return;
    const east = line[lineEast] as number;
    const north = line[lineNorth] as number;
    const distance = line[lineDistance] as number;
    let nearestMesh = Infinity;
    const edges = this.#edges;
    const end = this.#start[bin + 1] as number;
    for (let j = this.#start[bin] as number; j < end; j++) {
      const e = this.#sorted[j] as number;
      const k = e * 7;
      if ((edges[k + 6] as number) < steepness) continue;
      const ax = edges[k] as number;
      const ay = edges[k + 1] as number;
      const bx = (edges[k + 3] as number) - ax;
      const by = (edges[k + 4] as number) - ay;
      const across = east * by - north * bx;
      if (across === 0) continue;
      const u = (ax * by - ay * bx) / across;
      if (!(u > 0) || (u >= 1 && !endless)) continue;
      const v = (ax * north - ay * east) / across;
      if (v < 0 || v > 1) continue;
      const s = u * distance;
      const from = edges[k + 2] as number;
      const top = from + v * ((edges[k + 5] as number) - from);
      if (top / s - this.#sink * s < steepness) continue;
      // Under it: whoever sees past both faces of a hedge's foot sees past what is between them.
      if ((top - (this.#depth[e] as number)) / s - this.#sink * s > steepness) continue;
      if (this.#does[e] === mesh) {
        if (s < nearestMesh) {
          nearestMesh = s;
          met.mesh = this.#owner[e] as number;
        }
      } else if (s < met.distance) {
        met.distance = s;
        met.obstacle = this.#owner[e] as number;
      }
    }
    // A mesh behind a wall is not looked through.
    if (nearestMesh > met.distance) met.mesh = -1;
  }

  #grow(capacity: number): void {
    this.#edges = new Float64Array(7 * capacity);
    this.#depth = new Float64Array(capacity);
    this.#owner = new Int32Array(capacity);
    this.#does = new Uint8Array(capacity);
    this.#first = new Int32Array(capacity);
    this.#last = new Int32Array(capacity);
  }

  #take(source: Float64Array, at: number, depth: number, owner: number, doing: number): void {
    const e = this.#count++;
    const k = 7 * e;
    const ax = (source[at] as number) - this.#x;
    const ay = (source[at + 1] as number) - this.#y;
    const az = (source[at + 2] as number) - this.#eye;
    const bx = (source[at + 3] as number) - this.#x;
    const by = (source[at + 4] as number) - this.#y;
    const bz = (source[at + 5] as number) - this.#eye;
    const edges = this.#edges;
    edges[k] = ax;
    edges[k + 1] = ay;
    edges[k + 2] = az;
    edges[k + 3] = bx;
    edges[k + 4] = by;
    edges[k + 5] = bz;
    this.#depth[e] = depth;
    this.#owner[e] = owner;
    this.#does[e] = doing === mesh ? mesh : blocks;
    // The edge's nearest point bounds how steep it can look upwards, its farthest how steep downwards.
    const dx = bx - ax;
    const dy = by - ay;
    const squared = dx * dx + dy * dy;
    const t = squared > 0 ? Math.max(0, Math.min(1, -(ax * dx + ay * dy) / squared)) : 0;
    const px = ax + t * dx;
    const py = ay + t * dy;
    const high = Math.max(az, bz);
    const nearest = Math.sqrt(px * px + py * py);
    const far = Math.sqrt(Math.max(ax * ax + ay * ay, bx * bx + by * by));
    edges[k + 6] =
      high > 0 ? high / Math.max(nearest, 1e-9) : high / Math.max(far, 1e-9) - this.#sink * nearest;
    // Seen from the eye an edge takes up the shorter way round: clockwise from one end to the other.
    const clockwise = ax * by - ay * bx <= 0;
    const from = clockwise ? turnOf(ax, ay) : turnOf(bx, by);
    const to = clockwise ? turnOf(bx, by) : turnOf(ax, ay);
    const first = Math.floor((from / 4) * bins);
    this.#first[e] = first;
    this.#last[e] = first + Math.ceil(((to >= from ? to - from : to - from + 4) / 4) * bins);
  }

  /** Lists the edges of each bin of bearings: a counting sort. */
  #sort(): void {
    const start = this.#start.fill(0);
    const steepest = this.#steepest.fill(-Infinity);
    let entries = 0;
    for (let e = 0; e < this.#count; e++) {
      const most = this.#edges[7 * e + 6] as number;
      for (let b = this.#first[e] as number; b <= (this.#last[e] as number); b++) {
        const bin = b % bins;
        entries++;
        (start[bin] as number)++;
        if (most > (steepest[bin] as number)) steepest[bin] = most;
      }
    }
    if (this.#sorted.length < entries) this.#sorted = new Int32Array(2 * entries);
    let sum = 0;
    for (let b = 0; b <= bins; b++) {
      sum += start[b] as number;
      start[b] = sum;
    }
    for (let e = 0; e < this.#count; e++)
      for (let b = this.#first[e] as number; b <= (this.#last[e] as number); b++) {
        const bin = b % bins;
        const at = (start[bin] as number) - 1;
        start[bin] = at;
        this.#sorted[at] = e;
      }
  }
}

import { lineDistance, lineSteepness, lineTurn, newLine, type Line } from './line';
import type { Ground, Ray } from './terrain';
import { directionOf } from './turn';

/** How finely a ground is looked over from one eye. */
export interface Fineness {
  /** Rays round the horizon. */
  readonly rays: number;
  /** Share of the distance by which the steps along a ray grow once that is more than the ground's own step. */
  readonly growth: number;
}

/** 0.06 to 0.11 degrees, at most 2 m for each km; steps of 0.5 % of the distance. */
const usualFineness: Fineness = { rays: 4096, growth: 0.005 };

/** m beyond which nothing is looked for. */
export const farthest = 20_000;
/** Steps next to the eye that are always looked at one by one, and how far a stretch reaches beyond: times its beginning. */
const nearSteps = 4;
const stretch = 1.4;
/** What rounding to single precision may add to a steepness. */
const slack = 1e-6;

/**
 * The ground round an eye, ray by ray: for every step along a ray the steepest line of sight that the ground has
 * touched so far. Rays are cast when somebody looks along them, and only as far as that matters, so that a spot can be
 * dragged over a large model. Steepness is m of height for each m of distance, above the eye, the earth's curvature
 * taken off. Plain on purpose: this is the inner loop of a drag.
 */
export class HorizonRays {
  readonly #fineness: Fineness;
  #ground: Ground | null = null;
  #x = 0;
  #y = 0;
  #eye = 0;
  #sink = 0;
  #distances = new Float64Array(0);
  #step = 0;
  #steepest = new Float32Array(0);
  /** The ray under work, and the ground's height along it. */
  readonly #ray: Ray = new Float64Array(4);
  #heights = new Float64Array(0);
  readonly #line = newLine();
  /** m that steps are counted up to: a double handed over in an array makes no garbage. */
  readonly #within = new Float64Array(1);
  #cast: Int32Array;
  /** m within which all of a ray is cast, and its steepest so far: most lines need no more, and this stays in the cache. */
  readonly #castTo: Float64Array;
  readonly #most: Float32Array;
  /** East and north of each ray. */
  #ways: Float64Array = new Float64Array(0);

  constructor(fineness: Fineness = usualFineness) {
    this.#fineness = fineness;
    this.#cast = new Int32Array(fineness.rays);
    this.#castTo = new Float64Array(fineness.rays);
    this.#most = new Float32Array(fineness.rays);
  }

  /** An eye at (`x`, `y`, `eye`) of the site frame; `sink` as in `sinkPerSquareMetre`. */
  stand(ground: Ground, x: number, y: number, eye: number, sink: number): void {
    // Many pages never have a ground, and none has one before its first figure.
    if (this.#ways.length === 0) this.#ways = waysOf(this.#fineness.rays);
    if (ground.step !== this.#step) {
      this.#step = ground.step;
      const distances: number[] = [];
      for (let s = ground.step; s <= farthest; s += Math.max(ground.step, s * this.#fineness.growth))
        distances.push(s);
      this.#distances = Float64Array.from(distances);
      this.#heights = new Float64Array(distances.length);
      this.#steepest = new Float32Array(distances.length * this.#fineness.rays);
    }
    this.#ground = ground;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    this.#sink = sink;
    this.#cast.fill(0);
    this.#castTo.fill(0);
  }

  /**
   * m from the eye to where the ground first rises above a sight line of a steepness towards a place `distance` m
   * away (or to the sky, when infinite); Infinity when it does not. `turn`: its bearing in the frame (`turnOf`). The
   * ground nearer than one step to either end hides nothing: there the model is no finer than that.
   */
  firstAbove(turn: number, distance: number, steepness: number): number {
    this.#line[lineTurn] = turn;
    this.#line[lineDistance] = distance;
    this.#line[lineSteepness] = steepness;
    return this.distanceOf(this.stepAbove(this.#line, false));
  }

  /** m from the eye to a step along a ray; Infinity for none (-1). */
  distanceOf(step: number): number {
    return step < 0 ? Infinity : (this.#distances[step] as number);
  }

  /** The same as `firstAbove` as a number of steps, of a line that goes to its end or on to the sky; -1 for none. */
  stepAbove(line: Line, endless: boolean): number {
    const ground = this.#ground as Ground;
    const steepness = line[lineSteepness] as number;
    let reach = endless ? farthest : Math.min((line[lineDistance] as number) - ground.step, farthest);
    // Ground at its highest is as steep as that only so far out.
    if (steepness > 0) reach = Math.min(reach, (ground.highest - this.#eye) / steepness);
    const { rays } = this.#fineness;
    const ray = Math.min(rays - 1, Math.floor(((line[lineTurn] as number) / 4) * rays));
    if (reach < (this.#castTo[ray] as number) && (this.#most[ray] as number) < steepness) return -1;
    this.#within[0] = reach;
    const steps = this.#stepsWithin();
    if (steps === 0) return -1;
    const from = ray * this.#distances.length;
    if ((this.#cast[ray] as number) < steps) this.#extend(ray, steps);
    if ((this.#steepest[from + steps - 1] as number) < steepness) return -1;
    let low = 0;
    let high = steps - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#steepest[from + middle] as number) < steepness) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /**
   * Whether the ground rises above a sight line anywhere, as `firstAbove` has it, but told by its highest points where they
   * suffice: for eyes that look along few lines each. Nothing is kept.
   */
  rises(turn: number, distance: number, steepness: number): boolean {
    const ground = this.#ground as Ground;
    let reach = Math.min(distance - ground.step, farthest);
    if (steepness > 0) reach = Math.min(reach, (ground.highest - this.#eye) / steepness);
    this.#within[0] = reach;
    const steps = this.#stepsWithin();
    const { rays } = this.#fineness;
    const ray = Math.min(rays - 1, Math.floor((turn / 4) * rays));
    const sin = this.#ways[2 * ray] as number;
    const cos = this.#ways[2 * ray + 1] as number;
    const distances = this.#distances;
    for (let k = 0; k < steps;) {
      const a = distances[k] as number;
      let next = Math.min(steps, nearSteps);
      if (k >= nearSteps) {
        this.#within[0] = stretch * a;
        next = Math.max(k + 1, Math.min(steps, this.#stepsWithin()));
        const b = distances[next - 1] as number;
        const ceiling = ground.ceilingAlong(
          this.#x + sin * a,
          this.#y + cos * a,
          this.#x + sin * b,
          this.#y + cos * b,
        );
        const rise = ceiling - this.#eye;
        if (rise / (rise > 0 ? a : b) - this.#sink * a < steepness - slack) {
          k = next;
          continue;
        }
      }
      for (; k < next; k++) {
        const s = distances[k] as number;
        const height = ground.heightAt(this.#x + sin * s, this.#y + cos * s);
        // Held in single precision there.
        if (Math.fround((height - this.#eye) / s - this.#sink * s) >= steepness) return true;
      }
    }
    return false;
  }

  /** How many steps of a ray lie within `#within`. */
  #stepsWithin(): number {
    const reach = this.#within[0] as number;
    const distances = this.#distances;
    const step = this.#step;
    if (!(reach >= step)) return 0;
    // Up to where the steps begin to grow they are all alike.
    let low = Math.min(distances.length, Math.floor(reach / step + 1e-9));
    let high = distances.length;
    if (low < high && (distances[low - 1] as number) > reach) {
      high = low;
      low = 0;
    }
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((distances[middle] as number) <= reach) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #extend(ray: number, steps: number): void {
    const ground = this.#ground as Ground;
    const distances = this.#distances;
    const steepest = this.#steepest;
    const from = ray * distances.length;
    const done = this.#cast[ray] as number;
    const heights = this.#heights;
    this.#ray[0] = this.#x;
    this.#ray[1] = this.#y;
    this.#ray[2] = this.#ways[2 * ray] as number;
    this.#ray[3] = this.#ways[2 * ray + 1] as number;
    ground.heightsAlong(this.#ray, distances, done, steps, heights);
    const eye = this.#eye;
    const sink = this.#sink;
    let most = done > 0 ? (steepest[from + done - 1] as number) : -Infinity;
    for (let k = done; k < steps; k++) {
      const s = distances[k] as number;
      const steepness = ((heights[k] as number) - eye) / s - sink * s;
      if (steepness > most) most = steepness;
      steepest[from + k] = most;
    }
    this.#cast[ray] = steps;
    this.#castTo[ray] = steps < distances.length ? (distances[steps] as number) : Infinity;
    this.#most[ray] = most;
  }
}

/** The level unit vectors along the middles of all rays. */
function waysOf(rays: number): Float64Array {
  const ways = new Float64Array(2 * rays);
  for (let ray = 0; ray < rays; ray++) {
    const [east, north] = directionOf((4 * (ray + 0.5)) / rays);
    const level = Math.hypot(east, north);
    ways[2 * ray] = east / level;
    ways[2 * ray + 1] = north / level;
  }
  return ways;
}

import type { Ground } from './terrain';
import { directionOf } from './turn';

/** How finely a ground is looked over from one eye. */
export interface Fineness {
  /** Rays round the horizon. */
  readonly rays: number;
  /** Share of the distance by which the steps along a ray grow once that is more than the ground's own step. */
  readonly growth: number;
}

/** 0.06 to 0.11 degrees, at most 2 m for each km; steps of 0.5 % of the distance. */
export const usualFineness: Fineness = { rays: 4096, growth: 0.005 };

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
  #cast: Int32Array;
  /** East and north of each ray, made when they are needed for many eyes. */
  #ways: Float64Array | null = null;

  constructor(fineness: Fineness = usualFineness) {
    this.#fineness = fineness;
    this.#cast = new Int32Array(fineness.rays);
  }

  /** An eye at (`x`, `y`, `eye`) of the site frame; `sink` as in `sinkPerSquareMetre`. */
  stand(ground: Ground, x: number, y: number, eye: number, sink: number): void {
    if (ground.step !== this.#step) {
      this.#step = ground.step;
      const distances: number[] = [];
      for (let s = ground.step; s <= farthest; s += Math.max(ground.step, s * this.#fineness.growth))
        distances.push(s);
      this.#distances = Float64Array.from(distances);
      this.#steepest = new Float32Array(distances.length * this.#fineness.rays);
    }
    this.#ground = ground;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    this.#sink = sink;
    this.#cast.fill(0);
  }

  /**
   * m from the eye to where the ground first rises above a sight line of a steepness towards a place `distance` m
   * away (or to the sky, when infinite); Infinity when it does not. `turn`: its bearing in the frame (`turnOf`). The
   * ground nearer than one step to either end hides nothing: there the model is no finer than that.
   */
  firstAbove(turn: number, distance: number, steepness: number): number {
    const ground = this.#ground as Ground;
    const relief = ground.highest - this.#eye;
    let reach = Math.min(distance - ground.step, farthest);
    // Ground at its highest is as steep as that only so far out.
    if (steepness > 0) reach = Math.min(reach, relief / steepness);
    const steps = this.#stepsWithin(reach);
    if (steps === 0) return Infinity;
    const { rays } = this.#fineness;
    const ray = Math.min(rays - 1, Math.floor((turn / 4) * rays));
    const from = ray * this.#distances.length;
    if ((this.#cast[ray] as number) < steps) this.#extend(ray, steps);
    if ((this.#steepest[from + steps - 1] as number) < steepness) return Infinity;
    let [low, high] = [0, steps - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#steepest[from + middle] as number) < steepness) low = middle + 1;
      else high = middle;
    }
    return this.#distances[low] as number;
  }

  /**
   * Whether the ground rises above a sight line anywhere, as `firstAbove` has it, but told by its highest points where they
   * suffice: for eyes that look along few lines each. Nothing is kept.
   */
  rises(turn: number, distance: number, steepness: number): boolean {
    const ground = this.#ground as Ground;
    let reach = Math.min(distance - ground.step, farthest);
    if (steepness > 0) reach = Math.min(reach, (ground.highest - this.#eye) / steepness);
    const steps = this.#stepsWithin(reach);
    const { rays } = this.#fineness;
    const ray = Math.min(rays - 1, Math.floor((turn / 4) * rays));
    const ways = (this.#ways ??= waysOf(rays));
    const sin = ways[2 * ray] as number;
    const cos = ways[2 * ray + 1] as number;
    const distances = this.#distances;
    for (let k = 0; k < steps;) {
      const a = distances[k] as number;
      let next = Math.min(steps, nearSteps);
      if (k >= nearSteps) {
        next = Math.max(k + 1, Math.min(steps, this.#stepsWithin(stretch * a)));
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

  /** How many steps of a ray lie within `reach` m. */
  #stepsWithin(reach: number): number {
    const distances = this.#distances;
    const step = this.#step;
    if (!(reach >= step)) return 0;
    // Up to where the steps begin to grow they are all alike.
    let [low, high] = [Math.min(distances.length, Math.floor(reach / step + 1e-9)), distances.length];
    if (low < high && (distances[low - 1] as number) > reach) [low, high] = [0, low];
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
    const [sin, cos] = wayOf(ray, this.#fineness.rays);
    const from = ray * distances.length;
    const done = this.#cast[ray] as number;
    let most = done > 0 ? (steepest[from + done - 1] as number) : -Infinity;
    for (let k = done; k < steps; k++) {
      const s = distances[k] as number;
      const height = ground.heightAt(this.#x + sin * s, this.#y + cos * s);
      const steepness = (height - this.#eye) / s - this.#sink * s;
      if (steepness > most) most = steepness;
      steepest[from + k] = most;
    }
    this.#cast[ray] = steps;
  }
}

/** The level unit vector along the middle of a ray. */
function wayOf(ray: number, rays: number): readonly [east: number, north: number] {
  const [east, north] = directionOf((4 * (ray + 0.5)) / rays);
  const level = Math.hypot(east, north);
  return [east / level, north / level];
}

const waysOf = (rays: number): Float64Array =>
  Float64Array.from({ length: 2 * rays }, (_, k) => wayOf(k >> 1, rays)[k & 1] as number);

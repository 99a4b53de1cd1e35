import type { Framing } from '../figures/optics/framing';
import { HorizonRays } from '../figures/sight/horizon-rays';
import { targetsAlong } from '../figures/sight/spot-sight';
import type { Surroundings } from '../figures/sight/surroundings';
import { pointsOfAircraft, type Targets } from '../figures/sight/targets';
import { TopGrid } from '../figures/sight/top-grid';
import { turnOf } from '../figures/sight/turn';
import type { Path } from '../figures/traffic/paths';

/** Sight not looked for yet. */
const unasked = 255;

/**
 * What of the paths is in sight from one eye after another, asked sample by sample: most samples of a sweep are beaten by
 * others before anybody needs to know. The same sums as `SightLines`, so the same answers (test S122).
 */
export class LazySight {
  readonly #around: Surroundings;
  readonly #tops: TopGrid;
  readonly #rays = new HorizonRays();
  readonly #targets: readonly Targets[];
  readonly #known: readonly Uint8Array[];
  /** The edge that hid a point from where somebody stood before, -1 for none. */
  readonly #hiders: readonly Int32Array[];
  #x = 0;
  #y = 0;
  #eye = 0;

  constructor(around: Surroundings, paths: readonly Path[], framing: Framing) {
    this.#around = around;
    this.#tops = new TopGrid(around);
    this.#targets = paths.map((path) => targetsAlong(path, framing, around));
    this.#known = paths.map((path) => new Uint8Array(path.samples.count));
    this.#hiders = this.#targets.map(({ points }) => new Int32Array(points.length / 3).fill(-1));
  }

  /** Stands at (`x`, `y`, `eye`) of the site frame. `does`: what each obstacle does (`standing`). */
  stand(does: Uint8Array, x: number, y: number, eye: number): void {
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    for (const known of this.#known) known.fill(unasked);
    this.#tops.stand(does, x, y, eye);
    const { terrain, sink } = this.#around;
    if (terrain) this.#rays.stand(terrain, x, y, eye, sink);
  }

  /** Share of wheels, centre and fin tip that nothing hides at sample `i` of a path: 0 to 1. */
  at(path: number, i: number): number {
    const known = this.#known[path] as Uint8Array;
    let seen = known[i] as number;
    if (seen === unasked) {
      seen = this.#seenOf(path, i);
      known[i] = seen;
    }
    return seen / pointsOfAircraft;
  }

  /** Whether a direction to the sky is hidden: level unit vector of the site frame, and m up for each m out. */
  hidesSky(east: number, north: number, steepness: number): boolean {
    if (this.#tops.hides(east, north, 1, steepness, true)) return true;
    return this.#isBehindGround(east, north, Infinity, steepness);
  }

  #seenOf(path: number, i: number): number {
    const { points } = this.#targets[path] as Targets;
    const hiders = this.#hiders[path] as Int32Array;
    const { sink } = this.#around;
    let seen = 0;
    for (let p = 0, at = pointsOfAircraft * i; p < pointsOfAircraft; p++, at++) {
      const dx = (points[3 * at] as number) - this.#x;
      const dy = (points[3 * at + 1] as number) - this.#y;
      const distance = Math.sqrt(dx * dx + dy * dy);
      const steepness = ((points[3 * at + 2] as number) - this.#eye) / distance - sink * distance;
      // Straight overhead nothing is in the way.
      if (distance < 1e-3) seen++;
      else if (!this.#isBehindTop(hiders, at, dx, dy, distance, steepness))
        if (!this.#isBehindGround(dx, dy, distance, steepness)) seen++;
    }
    return seen;
  }

  #isBehindTop(
    hiders: Int32Array,
    at: number,
    dx: number,
    dy: number,
    distance: number,
    steepness: number,
  ): boolean {
    const former = hiders[at] as number;
    if (former >= 0 && this.#tops.isHiddenBy(former, dx, dy, distance, steepness, false)) return true;
    if (!this.#tops.hides(dx, dy, distance, steepness, false)) return false;
    hiders[at] = this.#tops.hiddenBy;
    return true;
  }

  #isBehindGround(dx: number, dy: number, distance: number, steepness: number): boolean {
    return this.#around.terrain !== null && this.#rays.rises(turnOf(dx, dy), distance, steepness);
  }
}

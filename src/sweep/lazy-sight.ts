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
  #x = 0;
  #y = 0;
  #eye = 0;

  constructor(around: Surroundings, paths: readonly Path[], framing: Framing) {
    this.#around = around;
    this.#tops = new TopGrid(around);
    this.#targets = paths.map((path) => targetsAlong(path, framing, around));
    this.#known = paths.map((path) => new Uint8Array(path.samples.count));
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
      seen = 0;
      const { points } = this.#targets[path] as Targets;
      for (let p = 0, k = 3 * pointsOfAircraft * i; p < pointsOfAircraft; p++, k += 3)
        if (!this.#hidden(points[k] as number, points[k + 1] as number, points[k + 2] as number)) seen++;
      known[i] = seen;
    }
    return seen / pointsOfAircraft;
  }

  /** Whether a direction to the sky is hidden: level unit vector of the site frame, and m up for each m out. */
  hidesSky(east: number, north: number, steepness: number): boolean {
    return this.#follow(east, north, 1, steepness, true);
  }

  #hidden(x: number, y: number, z: number): boolean {
    const dx = x - this.#x;
    const dy = y - this.#y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance < 1e-3) return false;
    return this.#follow(dx, dy, distance, (z - this.#eye) / distance - this.#around.sink * distance, false);
  }

  #follow(dx: number, dy: number, distance: number, steepness: number, endless: boolean): boolean {
    if (this.#tops.hides(dx, dy, distance, steepness, endless)) return true;
    if (!this.#around.terrain) return false;
    const turn = turnOf(dx, dy);
    const far = endless ? Infinity : distance;
    if (this.#rays.staysBelow(turn, far, steepness)) return false;
    return this.#rays.firstAbove(turn, far, steepness) < Infinity;
  }
}

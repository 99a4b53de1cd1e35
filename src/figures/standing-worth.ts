import { reachFactor, type Reach } from './optics/reach';
import type { PathInView } from './path-in-view';
import { aspectFactorBy, hazeBy } from './score';

/**
 * What of the score of a path's samples the sun does not change, as seen in `view`. Worked out once for both moments, and only
 * for the samples that somebody asks for. Made to be used again; plain arrays, since a number that a function hands back makes
 * garbage wherever that function is not built in.
 */
export class StandingWorth {
  /** Factors of the score, one entry a sample: told by `know`. */
  reach = new Float64Array(0);
  /** The same, told by `knowAll`: the aspect's factor, and what range and elevation do to the haze. */
  aspect = new Float64Array(0);
  haze = new Float64Array(0);
  /** How much is known of a sample: 0 for nothing, 1 for its reach, 2 for all. */
  known = new Uint8Array(0);

  readonly view: PathInView;
  #kit: Reach | null = null;

  constructor(view: PathInView) {
    this.view = view;
  }

  /** To be called after the view has looked along a path: what is known of it holds until the next call. */
  look(kit: Reach): void {
    const { count } = this.view;
    this.#kit = kit;
    if (this.known.length < count) this.#grow(2 * count);
    this.known.fill(0, 0, count);
  }

  know(i: number): void {
    const needed = this.view.focalAt(i);
    this.reach[i] = Number.isNaN(needed) ? 0 : reachFactor(this.#kit as Reach, needed);
    this.known[i] = 1;
  }

  knowAll(i: number): void {
    const { view } = this;
    if (this.known[i] === 0) this.know(i);
    const range = view.range[i] as number;
    this.aspect[i] = aspectFactorBy(view.cosAspectAt(i));
    this.haze[i] = hazeBy(range, (view.up[i] as number) / range);
    this.known[i] = 2;
  }

  #grow(capacity: number): void {
    this.reach = new Float64Array(capacity);
    this.aspect = new Float64Array(capacity);
    this.haze = new Float64Array(capacity);
    this.known = new Uint8Array(capacity);
  }
}

import type { Framing } from '../figures/optics/framing';
import type { PathSamples } from '../figures/traffic/samples';
import { PathInView } from '../figures/path-in-view';
import type { Eye } from '../figures/spot/eye-at';
import { sinUnderside } from '../figures/light-on-view';

/** Neighbouring samples that are passed over at once. */
export const pieceSize = 8;

/** What rounding may add to a bound, m. */
const slackM = 1e-3;

/**
 * A path in pieces, as seen from one eye after another: for each piece the ball that holds it says how near and in which
 * direction any of it can be. Only of the pieces that may matter somebody looks at the samples themselves.
 */
export class Pieces {
  readonly samples: number;
  readonly count: number;
  /** m to the nearest that any of the piece can be. */
  readonly nearest: Float64Array;
  /** Level unit vector from its middle to the eye, and by how much the cosine of an angle can be more at any of its samples. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly aside: Float64Array;

  /** Middle (earth-centred) and radius of each ball. */
  readonly #balls: Float64Array;
  readonly #parts: readonly PathSamples[];
  readonly #views: readonly PathInView[];
  readonly #looked: Uint8Array;
  #eye: Eye | null = null;
  #framing: Framing | null = null;

  constructor(samples: PathSamples) {
    this.samples = samples.count;
    this.count = Math.ceil(samples.count / pieceSize);
    this.#parts = Array.from({ length: this.count }, (_, b) =>
      partOf(samples, b * pieceSize, Math.min(samples.count, (b + 1) * pieceSize)),
    );
    this.#views = this.#parts.map(() => new PathInView());
    this.#looked = new Uint8Array(this.count);
    const array = () => new Float64Array(this.count);
    [this.nearest, this.east, this.north, this.aside] = [array(), array(), array(), array()];
    this.#balls = Float64Array.from(this.#parts.flatMap(({ centre }) => ballOf(centre)));
  }

  look(eye: Eye, framing: Framing): void {
    this.#eye = eye;
    this.#framing = framing;
    this.#looked.fill(0);
    const [px, py, pz] = eye.point;
    const [ex, ey, ez] = eye.frame.east;
    const [nx, ny, nz] = eye.frame.north;
    const balls = this.#balls;
    for (let b = 0, k = 0; b < this.count; b++, k += 4) {
      const dx = px - (balls[k] as number);
      const dy = py - (balls[k + 1] as number);
      const dz = pz - (balls[k + 2] as number);
      const radius = balls[k + 3] as number;
      const range = Math.sqrt(dx * dx + dy * dy + dz * dz);
      const e = dx * ex + dy * ey + dz * ez;
      const n = dx * nx + dy * ny + dz * nz;
      const level = Math.sqrt(e * e + n * n);
      this.nearest[b] = Math.max(0, range - radius);
      // Where one may look at the underside, or be in the midst of it, the level direction bounds nothing.
      const away = level - radius;
      const high = Math.sqrt(Math.max(0, range * range - level * level)) + radius;
      if (away <= radius || high > sinUnderside * away) {
        this.east[b] = 0;
        this.north[b] = 0;
        this.aside[b] = 2;
        continue;
      }
      this.east[b] = e / level;
      this.north[b] = n / level;
      // Seen from the eye the ball takes up asin(radius / level) to each side: the chord of that, and a little more.
      const sin = radius / level;
      this.aside[b] = sin / Math.sqrt((1 + Math.sqrt(1 - sin * sin)) / 2) + 1e-9;
    }
  }

  /** The piece that holds sample `i`, looked at: `i % pieceSize` is its place there. */
  viewAt(i: number): PathInView {
    const b = Math.floor(i / pieceSize);
    const view = this.#views[b] as PathInView;
    if (this.#looked[b] === 0) {
      this.#looked[b] = 1;
      view.look(this.#parts[b] as PathSamples, this.#eye as Eye, this.#framing as Framing);
    }
    return view;
  }
}

function partOf(samples: PathSamples, from: number, to: number): PathSamples {
  return {
    headingKnown: samples.headingKnown,
    count: to - from,
    station: samples.station.subarray(from, to),
    centre: samples.centre.subarray(3 * from, 3 * to),
    forward: samples.forward.subarray(3 * from, 3 * to),
    up: samples.up.subarray(3 * from, 3 * to),
    slope: samples.slope.subarray(from, to),
    attitude: samples.attitude.subarray(from, to),
    height: samples.height.subarray(from, to),
    share: samples.share.subarray(from, to),
    speed: samples.speed.subarray(from, to),
    onGround: samples.onGround.subarray(from, to),
  };
}

function ballOf(centre: Float64Array): readonly number[] {
  const middle = [0, 1, 2].map((axis) => {
    const all = centre.filter((_, k) => k % 3 === axis);
    return (Math.min(...all) + Math.max(...all)) / 2;
  }) as [number, number, number];
  let radius = 0;
  for (let k = 0; k < centre.length; k += 3)
    radius = Math.max(
      radius,
      Math.hypot(
        (centre[k] as number) - middle[0],
        (centre[k + 1] as number) - middle[1],
        (centre[k + 2] as number) - middle[2],
      ),
    );
  return [...middle, radius + slackM];
}

import type { Framing } from '../figures/optics/framing';
import type { PathSamples } from '../figures/traffic/samples';
import { PathInView } from '../figures/path-in-view';
import type { Eye } from '../figures/spot/eye-at';
import { acosDeg, DEG } from '../figures/geometry/angles';
import { aspectFactors } from '../figures/practice';
import { aspectFactor, hazeOf } from '../figures/score';
import { sinUnderside } from '../figures/light-on-view';

/** Neighbouring samples that are passed over at once. */
export const pieceSize = 8;

/** What rounding may add to a bound, m. */
const slackM = 1e-3;
const slackDegrees = 1e-6;

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
  /** What the factor of aspect cannot exceed, and the product of range and elevation in the haze is not below (`hazeOf`). */
  readonly aspect: Float64Array;
  /** mm that are needed at least. */
  readonly focal: Float64Array;
  readonly haze: Float64Array;

  /** Middle (earth-centred) and radius of each ball. */
  readonly #balls: Float64Array;
  /** Way in which each piece is flown (earth-centred unit vector), and degrees by which any of its samples differs. */
  readonly #ways: Float64Array | null;
  /** Radians by which the nose is up or down at most. */
  readonly #pitch: number;
  readonly #parts: readonly PathSamples[];
  readonly #views: readonly PathInView[];
  readonly #looked: Uint8Array;
  #eye: Eye | null = null;
  #framing: Framing | null = null;
  #spansOf: Framing | null = null;
  #spans: Spans = [0, 0, 0];

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
    [this.aspect, this.haze, this.focal] = [array().fill(1), array(), array()];
    this.#pitch = tiltOf(samples);
    this.#ways = samples.headingKnown ? Float64Array.from(this.#parts.flatMap(wayOf)) : null;
    this.#balls = Float64Array.from(this.#parts.flatMap(({ centre }) => ballOf(centre)));
  }

  look(eye: Eye, framing: Framing): void {
    this.#eye = eye;
    this.#framing = framing;
    this.#looked.fill(0);
    if (framing !== this.#spansOf) [this.#spansOf, this.#spans] = [framing, spansOf(framing)];
    const spans = this.#spans;
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
      const nearest = Math.max(0, range - radius);
      this.nearest[b] = nearest;
      this.#boundAspect(b, dx, dy, dz, range, radius);
      this.haze[b] = 0;
      this.focal[b] = leastFocal(framing, spans, nearest, Math.PI / 2, Math.PI / 2);
      // Where one may look at the underside, or be in the midst of it, the level direction bounds nothing.
      const away = level - radius;
      const high = Math.sqrt(Math.max(0, range * range - level * level)) + radius;
      if (away <= radius || high > sinUnderside * away) {
        this.east[b] = 0;
        this.north[b] = 0;
        this.aside[b] = 2;
        continue;
      }
      this.focal[b] = leastFocal(framing, spans, nearest, high / away + offLevel, this.#pitch);
      // No elevation is more than its tangent.
      const { range: far, elevation } = hazeOf(nearest, (high / away) * DEG);
      this.haze[b] = far * elevation;
      this.east[b] = e / level;
      this.north[b] = n / level;
      // Seen from the eye the ball takes up asin(radius / level) to each side: the chord of that, and a little more.
      const sin = radius / level;
      this.aside[b] = sin / Math.sqrt((1 + Math.sqrt(1 - sin * sin)) / 2) + 1e-9;
    }
  }

  /** `dx`, `dy`, `dz`: from the middle to the eye. */
  #boundAspect(b: number, dx: number, dy: number, dz: number, range: number, radius: number): void {
    const ways = this.#ways;
    if (!ways) return;
    this.aspect[b] = 1;
    if (range <= radius) return;
    const k = 4 * b;
    const along = dx * (ways[k] as number) + dy * (ways[k + 1] as number) + dz * (ways[k + 2] as number);
    const { fullFrom, fullTo } = aspectFactors;
    const middle = acosDeg(along / range);
    const apart = Math.asin(radius / range) * DEG + (ways[k + 3] as number) + slackDegrees;
    if (middle + apart < fullFrom) this.aspect[b] = aspectFactor(middle + apart);
    else if (middle - apart > fullTo) this.aspect[b] = aspectFactor(middle - apart);
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

type Spans = readonly [long: number, wide: number, tall: number];

/** m from one end to the other of what is framed, the centre always between: forward, left and up. */
function spansOf({ facing, anyWay }: Framing): Spans {
  const span = (axis: number): number => {
    let [low, high] = [0, 0];
    for (const { points } of [facing, anyWay])
      for (let k = axis; k < points.length; k += 3) {
        low = Math.min(low, points[k] as number);
        high = Math.max(high, points[k] as number);
      }
    return high - low;
  };
  return [span(0), span(1), span(2)];
}

/** Radians by which nose or wings are off the level of the place, seen from the earth's centre, at most. */
function tiltOf({ count, centre, forward, up, attitude, bank }: PathSamples): number {
  let most = 0;
  for (let i = 0; i < count; i++) {
    const part = (list: Float64Array) => [0, 1, 2].map((axis) => list[3 * i + axis] as number);
    const down = part(centre);
    const high = Math.hypot(...down);
    const dot = (v: readonly number[]) =>
      v.reduce((sum, x, axis) => sum + (x * (down[axis] as number)) / high, 0);
    const off = Math.max(Math.asin(Math.abs(dot(part(forward)))), Math.acos(Math.min(1, dot(part(up)))));
    most = Math.max(most, off + Math.abs(attitude[i] as number) + Math.abs(bank[i] as number));
  }
  return most;
}

/** Radians between what is level at the eye and at the aircraft: at most 60 km. */
const offLevel = 0.01;

/**
 * A focal length in mm that the needed one is certainly not below, from `nearest` m on. Across, the subject takes no more than
 * the ball about it; upwards less where one looks at it from the side: its height, and of length and width what an elevation
 * and a pitch (radians) turn upwards.
 */
function leastFocal(
  { radius, fill, sensorWidth, sensorHeight }: Framing,
  spans: Spans,
  nearest: number,
  elevation: number,
  pitch: number,
): number {
  if (nearest <= radius) return 0;
  const [long, wide, tall] = spans;
  const high = (long + wide) * (elevation + pitch) + tall;
  const across = 2 * radius;
  return fill * (nearest - radius) * Math.min(sensorWidth / across, sensorHeight / Math.min(across, high));
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
    bank: samples.bank.subarray(from, to),
    height: samples.height.subarray(from, to),
    share: samples.share.subarray(from, to),
    speed: samples.speed.subarray(from, to),
    onGround: samples.onGround.subarray(from, to),
  };
}

/** As `PathInView` has it for the aspect: forward, and up by the slope. */
function wayOf({ count, forward, up, slope }: PathSamples): readonly number[] {
  const ways = Array.from({ length: count }, (_, i) => {
    const [x, y, z] = [0, 1, 2].map(
      (axis) => (forward[3 * i + axis] as number) + (slope[i] as number) * (up[3 * i + axis] as number),
    ) as [number, number, number];
    const long = Math.hypot(x, y, z);
    return [x / long, y / long, z / long] as const;
  });
  const way = ways[Math.floor(count / 2)] as readonly [number, number, number];
  const apart = ways.map(([x, y, z]) => acosDeg(x * way[0] + y * way[1] + z * way[2]));
  return [...way, Math.max(...apart)];
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

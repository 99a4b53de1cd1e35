import type { Framing } from '../../figures/optics/framing';

/** Steps of the sine of the angle between the way it is flown and the line of sight, seen from above. */
const steps = 96;
/** Angles looked at in each step, and what may lie between two of them (radians). */
const looked = 8;
/** Radians between what is level at the eye and at the aircraft: at most 60 km. */
export const offLevel = 0.01;
/** Steps beyond which nobody asks what is widest among them. */
const mostSteps = 24;

/** How a piece of a path stands to an eye: all of it between these. */
export interface Stance {
  /** m from the eye to the nearest. */
  nearest: number;
  /** Radians above or below the horizontal, at most; and of nose and wings against the level, at most. */
  elevation: number;
  pitch: number;
  /** Sine of the level angle between track and line of sight. */
  leastSine: number;
  mostSine: number;
}

/**
 * A focal length in mm that the needed one is certainly not below. Across, the subject takes what its points take when turned by
 * that angle, at most the ball about it; upwards its height, and of length and width what an elevation and a pitch turn upwards.
 */
export class LeastFocal {
  readonly #framing: Framing;
  /** m that it is wide across the line of sight at most, step by step of the sine. */
  readonly #wide = new Float64Array(steps + 1);
  readonly #long: number;
  readonly #span: number;
  readonly #tall: number;

  constructor(framing: Framing, headingKnown: boolean) {
    this.#framing = framing;
    const { points: all, counts } = headingKnown ? framing.facing : framing.anyWay;
    const points = all.filter((_, k) => counts[Math.floor(k / 3)] === 1);
    [this.#long, this.#span, this.#tall] = [extent(points, 0), extent(points, 1), extent(points, 2)];
    const { radius } = framing;
    for (let s = 0; s <= steps; s++) {
      if (!headingKnown) {
        this.#wide[s] = 2 * radius;
        continue;
      }
      const [from, to] = [Math.asin(s / steps), Math.asin(Math.min(1, (s + 1) / steps))];
      const between = (to - from) / looked;
      let widest = 0;
      for (let k = 0; k <= looked; k++) widest = Math.max(widest, acrossAt(points, from + k * between));
      // A point moves by no more than its distance from the centre times the angle.
      this.#wide[s] = Math.min(2 * radius, widest + radius * between);
    }
  }

  /** Of a piece somewhere in the sky. */
  anyhow(nearest: number): number {
    const { radius, fill, sensorWidth, sensorHeight } = this.#framing;
    return nearest <= radius
      ? 0
      : (fill * (nearest - radius) * Math.min(sensorWidth, sensorHeight)) / (2 * radius);
  }

  /** Of a piece so low that one looks at its side. */
  at({ nearest, elevation, pitch, leastSine, mostSine }: Stance): number {
    const { radius, fill, sensorWidth, sensorHeight } = this.#framing;
    if (nearest <= radius) return 0;
    const first = (Math.max(0, leastSine) * steps) | 0;
    const last = (Math.min(1, mostSine) * steps) | 0;
    let across = 0;
    if (last - first > mostSteps) across = 2 * radius;
    else
      for (let s = first; s <= last; s++) {
        const wide = this.#wide[s] as number;
        if (wide > across) across = wide;
      }
    // A pitch shortens it, a bank its wings; either turns its height to the side.
    across += (this.#long + this.#span) * (0.5 * pitch * pitch + offLevel) + this.#tall * (pitch + offLevel);
    const high = (this.#long + this.#span) * (elevation + pitch) + this.#tall;
    const ball = 2 * radius;
    return (
      fill *
      (nearest - radius) *
      Math.min(sensorWidth / Math.min(ball, across), sensorHeight / Math.min(ball, high))
    );
  }
}

/** m from one end to the other along an axis, the centre always between. */
function extent(points: ArrayLike<number>, axis: number): number {
  let [low, high] = [0, 0];
  for (let k = axis; k < points.length; k += 3) {
    low = Math.min(low, points[k] as number);
    high = Math.max(high, points[k] as number);
  }
  return high - low;
}

/** m across the line of sight when the track makes an angle with it, to whichever side. */
function acrossAt(points: ArrayLike<number>, angle: number): number {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  let widest = 0;
  for (const side of [1, -1]) {
    let [low, high] = [0, 0];
    for (let k = 0; k < points.length; k += 3) {
      const x = (points[k] as number) * sin + side * (points[k + 1] as number) * cos;
      low = Math.min(low, x);
      high = Math.max(high, x);
    }
    widest = Math.max(widest, high - low);
  }
  return widest;
}

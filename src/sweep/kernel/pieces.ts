import type { Framing } from '../../figures/optics/framing';
import type { PathSamples } from '../../figures/traffic/samples';
import { PathInView } from '../../figures/path-in-view';
import type { Eye } from '../../figures/spot/eye-at';
import { acosDeg, DEG, RAD } from '../../figures/geometry/angles';
import { aspectFactors, noFlankWithin } from '../../figures/practice';
import { aspectFactor, hazeOf } from '../../figures/score';
import { sinUnderside } from '../../figures/light-on-view';
import { LeastFocal, offLevel, type Stance } from './least-focal';
import { leftOf, partOf, perRod, rodOf, tiltOf, wayOf } from './piece-shapes';

/** Neighbouring samples that are passed over at once. */
export const pieceSize = 8;

const sinNoFlank = Math.sin(noFlankWithin * RAD);

/** Which flank of all samples of a piece is seen: 0 where that is not certain, or none is. */
export type Side = 0 | typeof leftSeen | typeof rightSeen;
export const leftSeen = 1;
export const rightSeen = 2;
const anySide = 3;
/** What rounding may add to a bound. */
const slackDegrees = 1e-6;
const slackRadians = 1e-8;

/**
 * A path in pieces, as seen from one eye after another: for each piece the rod that holds it says how near and in which
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
  /** What the factor of aspect cannot exceed, and what range and elevation do to the haze is not below (`hazeOf`). */
  readonly aspect: Float64Array;
  /** mm that are needed at least. */
  readonly focal: Float64Array;
  readonly haze: Float64Array;
  /** `Side` of each piece. */
  readonly side: Uint8Array;

  /** `rodOf` each piece. */
  readonly #rods: Float64Array;
  /** Way in which each piece is flown (earth-centred unit vector), and degrees by which any of its samples differs. */
  readonly #ways: Float64Array | null;
  /** The same of the direction to the left. */
  readonly #lefts: Float64Array;
  /** Radians by which the nose is up or down at most. */
  readonly #pitch: Float64Array;
  readonly #parts: readonly PathSamples[];
  readonly #views: readonly PathInView[];
  readonly #looked: Uint8Array;
  readonly #framing: Framing;
  readonly #leastFocal: LeastFocal;
  /** 1 where some sample is banked: its flank may be the top or the underside, and its span stands up. */
  readonly #banked: Uint8Array;
  readonly #stance: Stance = { nearest: 0, elevation: 0, pitch: 0, leastSine: 0, mostSine: 1 };
  #eye: Eye | null = null;

  constructor(samples: PathSamples, framing: Framing) {
    this.#framing = framing;
    this.#leastFocal = new LeastFocal(framing, samples.headingKnown);
    this.samples = samples.count;
    this.count = Math.ceil(samples.count / pieceSize);
    this.#parts = Array.from({ length: this.count }, (_, b) =>
      partOf(samples, b * pieceSize, Math.min(samples.count, (b + 1) * pieceSize)),
    );
    this.#views = this.#parts.map(() => new PathInView());
    this.#looked = new Uint8Array(this.count);
    this.side = new Uint8Array(this.count);
    const array = () => new Float64Array(this.count);
    [this.nearest, this.east, this.north, this.aside] = [array(), array(), array(), array()];
    [this.aspect, this.haze, this.focal] = [array().fill(1), array(), array()];
    this.#banked = Uint8Array.from(this.#parts, ({ bank }) => (bank.some((roll) => roll !== 0) ? 1 : 0));
    this.#pitch = Float64Array.from(this.#parts, tiltOf);
    this.#ways = samples.headingKnown ? Float64Array.from(this.#parts.flatMap(wayOf)) : null;
    this.#lefts = Float64Array.from(this.#parts.flatMap(leftOf), (x, k) => (k % 4 === 3 ? x * RAD : x));
    this.#rods = Float64Array.from(this.#parts.flatMap(({ centre }) => rodOf(centre)));
  }

  look(eye: Eye): void {
    this.#eye = eye;
    this.#looked.fill(0);
    const stance = this.#stance;
    const [px, py, pz] = eye.point;
    const [ex, ey, ez] = eye.frame.east;
    const [nx, ny, nz] = eye.frame.north;
    const rods = this.#rods;
    for (let b = 0, k = 0; b < this.count; b++, k += perRod) {
      const dx = px - (rods[k] as number);
      const dy = py - (rods[k + 1] as number);
      const dz = pz - (rods[k + 2] as number);
      const ax = rods[k + 3] as number;
      const ay = rods[k + 4] as number;
      const az = rods[k + 5] as number;
      const half = rods[k + 6] as number;
      const bow = rods[k + 7] as number;
      const squared = dx * dx + dy * dy + dz * dz;
      const range = Math.sqrt(squared);
      const along = Math.abs(dx * ax + dy * ay + dz * az);
      const across = Math.sqrt(Math.max(0, squared - along * along));
      const beyond = Math.max(0, along - half);
      const nearest = Math.max(0, Math.sqrt(across * across + beyond * beyond) - bow);
      this.nearest[b] = nearest;
      const room = range - half - bow;
      this.#boundAspect(b, dx, dy, dz, range, room > 0 ? ((half * across) / range + bow) / room : Infinity);
      this.haze[b] = 0;
      this.focal[b] = this.#leastFocal.anyhow(nearest);
      const e = dx * ex + dy * ey + dz * ez;
      const n = dx * nx + dy * ny + dz * nz;
      const level = Math.sqrt(e * e + n * n);
      // The rod seen from above.
      const ae = ax * ex + ay * ey + az * ez;
      const an = ax * nx + ay * ny + az * nz;
      const away = level - half - bow;
      const steep = Math.sqrt(Math.max(0, 1 - ae * ae - an * an));
      const high = Math.sqrt(Math.max(0, squared - level * level)) + half * steep + bow;
      // Where one may look at the underside, or be in the midst of it, or it is banked, the level direction bounds nothing.
      if (this.#banked[b] === 1 || away <= half || high > sinUnderside * away) {
        this.east[b] = 0;
        this.north[b] = 0;
        this.aside[b] = 2;
        this.side[b] = 0;
        continue;
      }
      // Radians that it takes up to each side at most: no angle is more than its tangent, no chord more than its angle.
      const spread = ((half * Math.abs(e * an - n * ae)) / level + bow) / away + slackRadians;
      this.east[b] = e / level;
      this.north[b] = n / level;
      this.aside[b] = spread;
      this.#boundTurn(b, dx, dy, dz, level, spread, high / away);
      stance.nearest = nearest;
      stance.elevation = high / away + offLevel;
      stance.pitch = this.#pitch[b] as number;
      this.focal[b] = this.#leastFocal.at(stance);
      this.haze[b] = hazeOf(nearest, (high / away) * DEG);
    }
  }

  /** (`dx`, `dy`, `dz`): from the middle to the eye; `spread`: radians that the piece takes up to each side at most. */
  #boundAspect(b: number, dx: number, dy: number, dz: number, range: number, spread: number): void {
    const ways = this.#ways;
    if (!ways) return;
    this.aspect[b] = 1;
    this.side[b] = 0;
    if (!(spread < 1)) return;
    const k = 4 * b;
    const along = dx * (ways[k] as number) + dy * (ways[k + 1] as number) + dz * (ways[k + 2] as number);
    const { fullFrom, fullTo } = aspectFactors;
    const middle = acosDeg(along / range);
    const apart = spread * DEG + (ways[k + 3] as number) + slackDegrees;
    if (middle + apart < fullFrom) this.aspect[b] = aspectFactor(middle + apart);
    else if (middle - apart > fullTo) this.aspect[b] = aspectFactor(middle - apart);
    if (middle - apart > noFlankWithin && middle + apart < 180 - noFlankWithin) this.side[b] = anySide;
  }

  /** How it is turned to the line of sight seen from above, and which flank that shows. `steepness`: up for each m away. */
  #boundTurn(
    b: number,
    dx: number,
    dy: number,
    dz: number,
    level: number,
    spread: number,
    steepness: number,
  ): void {
    const lefts = this.#lefts;
    const k = 4 * b;
    const across = dx * (lefts[k] as number) + dy * (lefts[k + 1] as number) + dz * (lefts[k + 2] as number);
    const sine = Math.abs(across) / level;
    const off = spread + (1 + steepness) * (lefts[k + 3] as number) + offLevel * steepness + slackRadians;
    this.#stance.leastSine = sine - off;
    this.#stance.mostSine = sine + off;
    if (this.side[b] !== anySide) return;
    this.side[b] = !(sine - off > sinNoFlank) ? 0 : across > 0 ? leftSeen : rightSeen;
  }

  /** The piece that holds sample `i`, looked at: `i % pieceSize` is its place there. */
  viewAt(i: number): PathInView {
    const b = Math.floor(i / pieceSize);
    const view = this.#views[b] as PathInView;
    if (this.#looked[b] === 0) {
      this.#looked[b] = 1;
      view.look(this.#parts[b] as PathSamples, this.#eye as Eye, this.#framing);
    }
    return view;
  }
}

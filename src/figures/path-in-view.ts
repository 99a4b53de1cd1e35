import {
  bodyFocal,
  bodyRange,
  bodySize,
  fillFrame,
  finAhead,
  finRight,
  finTop,
  noseAhead,
  noseRight,
  noseTop,
  wingAhead,
  wingRight,
  wingTop,
} from './optics/fill-frame';
import { sinRollFrom, type Framing } from './optics/framing';
import { bankedFrom } from './practice';
import type { Eye } from './spot/eye-at';
import type { PathSamples } from './traffic/samples';
import { RAD } from './geometry/angles';

/** How much of the aircraft is in sight at each sample of a path, counted in its three points. */
export interface InSight {
  readonly inSight: Uint8Array;
}
const points = 3;

/** Radians between what is level at the eye and at the aircraft: at most 60 km. */
const offLevel = 0.01;

/** Radians of bank from which the flank that is seen is the top or the underside. */
const topsideFrom = bankedFrom * RAD;

/**
 * A path as seen from an eye: what does not depend on the sun. East, north and up are those at the eye.
 *
 * Made to be used again for every path and spot: nothing is allocated while a spot is dragged. Where the aircraft
 * is, is worked out for every sample at once; how it is turned and framed, which costs ten times as much, only for
 * the samples that somebody asks for. Plain on purpose: thousands of samples pass within one pointer move (design,
 * section 8).
 */
export class PathInView {
  /** The aircraft's centre from the eye, in m, one entry a sample. */
  east = new Float64Array(0);
  north = new Float64Array(0);
  up = new Float64Array(0);
  range = new Float64Array(0);
  /**
   * Focal lengths in mm that the needed ones are certainly not below. The subject fits into a ball about its centre; from further
   * away than its radius the ball cannot look larger than radius / (range - radius) to each side. Upwards in the frame it takes no
   * more than its height, what pitch and bank lift of it, and what is seen of it from above or below.
   */
  leastFocal = new Float64Array(0);
  count = 0;

  #samples: PathSamples | null = null;
  /** East, north and up at the eye, earth-centred: an array of doubles is read without making garbage. */
  readonly #axes = new Float64Array(9);
  /** Nose attitude and bank of the sample framed last, and their cosines and sines: neighbours mostly share them. */
  #pitch = 0;
  #roll = 0;
  readonly #turned = Float64Array.of(1, 0, 1, 0);
  readonly #body = new Float64Array(bodySize);
  #framing: Framing | null = null;
  #sight: InSight | null = null;
  #known = new Uint8Array(0);
  #cosAspect = new Float64Array(0);
  #focal = new Float64Array(0);
  #leftEast = new Float64Array(0);
  #leftNorth = new Float64Array(0);
  #leftUp = new Float64Array(0);

  /** Looks from an eye along a path; `sight` null on open ground. What is in view holds until the next call. */
  look(samples: PathSamples, eye: Eye, framing: Framing, sight: InSight | null = null): void {
    const { count, centre, attitude, bank } = samples;
    const { radius, reaching, fill, sensorWidth, sensorHeight } = framing;
    if (this.range.length < count) this.#grow(2 * count);
    this.#samples = samples;
    this.#framing = framing;
    this.#sight = sight;
    this.count = count;
    const known = this.#known;
    const axes = this.#axes;
    // One by one: a call for three numbers takes longer than the numbers, and paths come in short pieces.
    const ex = (axes[0] = eye.frame.east[0]);
    const ey = (axes[1] = eye.frame.east[1]);
    const ez = (axes[2] = eye.frame.east[2]);
    const nx = (axes[3] = eye.frame.north[0]);
    const ny = (axes[4] = eye.frame.north[1]);
    const nz = (axes[5] = eye.frame.north[2]);
    const ux = (axes[6] = eye.frame.up[0]);
    const uy = (axes[7] = eye.frame.up[1]);
    const uz = (axes[8] = eye.frame.up[2]);
    const px = eye.point[0];
    const py = eye.point[1];
    const pz = eye.point[2];
    const { east, north, up, range, leastFocal } = this;
    const byWidth = sensorWidth / radius;
    for (let i = 0, k = 0; i < count; i++, k += 3) {
      known[i] = 0;
      const dx = (centre[k] as number) - px;
      const dy = (centre[k + 1] as number) - py;
      const dz = (centre[k + 2] as number) - pz;
      east[i] = dx * ex + dy * ey + dz * ez;
      north[i] = dx * nx + dy * ny + dz * nz;
      const above = dx * ux + dy * uy + dz * uz;
      const slant = Math.sqrt(dx * dx + dy * dy + dz * dz);
      up[i] = above;
      range[i] = slant;
      const sine = Math.abs(above) / slant;
      const lifted =
        reaching.up +
        reaching.along * Math.abs(attitude[i] as number) +
        reaching.across * Math.abs(bank[i] as number) +
        radius * (sine + offLevel);
      // Where the camera is rolled, or an attitude is not known, the ball.
      const high = sine <= sinRollFrom && lifted < radius ? lifted : radius;
      leastFocal[i] = (fill * Math.min(byWidth, sensorHeight / high) * (slant - radius)) / 2;
    }
  }

  /** Share of wheels, centre and fin tip that no obstacle and no terrain hides: 0 to 1. */
  sightAt(i: number): number {
    return this.#sight ? (this.#sight.inSight[i] as number) / points : 1;
  }

  /** Needed focal length in mm; NaN where the eye is inside the aircraft. */
  focalAt(i: number): number {
    if (this.#known[i] === 0) this.#frame(i);
    return this.#focal[i] as number;
  }

  /** Cosine of the aspect; NaN where the heading is not known. */
  cosAspectAt(i: number): number {
    if (this.#known[i] === 0) this.#frame(i);
    return this.#cosAspect[i] as number;
  }

  /**
   * Dot product of a vector (east, north, up at the eye) with the level direction to the aircraft's left, square to its
   * flanks. Of one that is banked steeply with the direction square to its wings: what is seen is its top or its underside.
   */
  leftwardsAt(i: number, east: number, north: number, up: number): number {
    if (this.#known[i] === 0) this.#frame(i);
    return (
      (this.#leftEast[i] as number) * east +
      (this.#leftNorth[i] as number) * north +
      (this.#leftUp[i] as number) * up
    );
  }

  #grow(capacity: number): void {
    const array = () => new Float64Array(capacity);
    this.east = array();
    this.north = array();
    this.up = array();
    this.range = array();
    this.leastFocal = array();
    this.#cosAspect = array();
    this.#focal = array();
    this.#leftEast = array();
    this.#leftNorth = array();
    this.#leftUp = array();
    this.#known = new Uint8Array(capacity);
  }

  /**
   * How the aircraft is turned at a sample, and the focal length that frames it (`fillFrame`): that of a level pinhole camera
   * whose axis meets the aircraft's centre.
   */
  #frame(i: number): void {
    const { forward, up: upward, slope, attitude, bank, headingKnown } = this.#samples as PathSamples;
    const framing = this.#framing as Framing;
    this.#known[i] = 1;
    const axes = this.#axes;
    const ex = axes[0] as number;
    const ey = axes[1] as number;
    const ez = axes[2] as number;
    const nx = axes[3] as number;
    const ny = axes[4] as number;
    const nz = axes[5] as number;
    const ux = axes[6] as number;
    const uy = axes[7] as number;
    const uz = axes[8] as number;
    const e = this.east[i] as number;
    const n = this.north[i] as number;
    const u = this.up[i] as number;
    const range = this.range[i] as number;

    // Track and local up of the aircraft, seen from the eye.
    const k = 3 * i;
    const hx = forward[k] as number;
    const hy = forward[k + 1] as number;
    const hz = forward[k + 2] as number;
    const away = Math.sqrt(e * e + n * n);
    const he = headingKnown || away === 0 ? hx * ex + hy * ey + hz * ez : n / away;
    const hn = headingKnown || away === 0 ? hx * nx + hy * ny + hz * nz : -e / away;
    const hu = headingKnown || away === 0 ? hx * ux + hy * uy + hz * uz : 0;
    const vx = upward[k] as number;
    const vy = upward[k + 1] as number;
    const vz = upward[k + 2] as number;
    const ve = vx * ex + vy * ey + vz * ez;
    const vn = vx * nx + vy * ny + vz * nz;
    const vu = vx * ux + vy * uy + vz * uz;
    // Left is up x forward.
    const le = vn * hu - vu * hn;
    const ln = vu * he - ve * hu;
    const lu = ve * hn - vn * he;
    this.#leftEast[i] = le;
    this.#leftNorth[i] = ln;
    this.#leftUp[i] = lu;

    const rise = slope[i] as number;
    const run = Math.sqrt(1 + rise * rise);
    this.#cosAspect[i] = !headingKnown
      ? NaN
      : -((he + ve * rise) * e + (hn + vn * rise) * n + (hu + vu * rise) * u) / (run * range);

    // Nose and body-up, turned by the nose attitude.
    const turned = this.#turned;
    const pitch = attitude[i] as number;
    if (pitch !== this.#pitch) {
      this.#pitch = pitch;
      turned[0] = Math.cos(pitch);
      turned[1] = Math.sin(pitch);
    }
    const c = turned[0] as number;
    const s = turned[1] as number;
    const be = c * he + s * ve;
    const bn = c * hn + s * vn;
    const bu = c * hu + s * vu;
    const te = c * ve - s * he;
    const tn = c * vn - s * hn;
    const tu = c * vu - s * hu;
    // Banked about the nose: with the right wing down the left one rises, and the top leans to the right.
    const roll = bank[i] as number;
    if (roll !== this.#roll) {
      this.#roll = roll;
      turned[2] = Math.cos(roll);
      turned[3] = Math.sin(roll);
    }
    const cosRoll = turned[2] as number;
    const sinRoll = turned[3] as number;
    const wingE = cosRoll * le + sinRoll * te;
    const wingN = cosRoll * ln + sinRoll * tn;
    const wingU = cosRoll * lu + sinRoll * tu;
    const de = cosRoll * te - sinRoll * le;
    const dn = cosRoll * tn - sinRoll * ln;
    const du = cosRoll * tu - sinRoll * lu;
    if (Math.abs(roll) >= topsideFrom) {
      this.#leftEast[i] = de;
      this.#leftNorth[i] = dn;
      this.#leftUp[i] = du;
    }

    // Camera: forward to the centre, right level, top square to both.
    const fe = e / range;
    const fn = n / range;
    const fu = u / range;
    const ground = Math.sqrt(fe * fe + fn * fn);
    // Straight overhead there is no level right; any will do, since the camera is rolled there.
    let re = ground > 0 ? fn / ground : 1;
    let rn = ground > 0 ? -fe / ground : 0;
    let ru = 0;
    if (Math.abs(fu) > sinRollFrom) {
      const inLine = be * fe + bn * fn + bu * fu;
      const we = be - inLine * fe;
      const wn = bn - inLine * fn;
      const wu = bu - inLine * fu;
      const w = Math.sqrt(we * we + wn * wn + wu * wu);
      if (w > 0) {
        re = we / w;
        rn = wn / w;
        ru = wu / w;
      }
    }
    const qe = rn * fu - ru * fn;
    const qn = ru * fe - re * fu;
    const qu = re * fn - rn * fe;

    const body = this.#body;
    body[noseRight] = be * re + bn * rn + bu * ru;
    body[noseTop] = be * qe + bn * qn + bu * qu;
    body[noseAhead] = be * fe + bn * fn + bu * fu;
    body[wingRight] = wingE * re + wingN * rn + wingU * ru;
    body[wingTop] = wingE * qe + wingN * qn + wingU * qu;
    body[wingAhead] = wingE * fe + wingN * fn + wingU * fu;
    body[finRight] = de * re + dn * rn + du * ru;
    body[finTop] = de * qe + dn * qn + du * qu;
    body[finAhead] = de * fe + dn * fn + du * fu;
    body[bodyRange] = range;
    fillFrame(body, framing, headingKnown);
    this.#focal[i] = body[bodyFocal] as number;
  }
}

import { along, lengthOf, minus, scaled, type Vec3 } from '../geometry/earth';
import type { PathSamples } from '../traffic/samples';
import { turned, type EastNorthUp, type ViewPoint } from './from-eye';
import { sinRollFrom } from '../optics/framing';

/** Where an aircraft is and how it is turned, as seen from an eye: m, and unit vectors of the body's axes. */
export interface Pose {
  readonly at: EastNorthUp;
  readonly forward: EastNorthUp;
  readonly left: EastNorthUp;
  readonly up: EastNorthUp;
  /** m from the eye to the centre. */
  readonly range: number;
  readonly headingKnown: boolean;
}

const triple = (array: Float64Array, i: number): Vec3 => [
  array[3 * i] as number,
  array[3 * i + 1] as number,
  array[3 * i + 2] as number,
];

/** The pose at a place between samples: `at` 2.5 is half-way from sample 2 to sample 3. */
export function poseAt(samples: PathSamples, at: number, view: ViewPoint): Pose {
  const from = Math.max(0, Math.min(samples.count - 1, Math.floor(at)));
  const to = Math.min(samples.count - 1, from + 1);
  const t = Math.max(0, Math.min(1, at - from));
  const mixed = (array: Float64Array) => {
    const [a, b] = [triple(array, from), triple(array, to)];
    return along(a, minus(b, a), t);
  };
  const place = turned(view, minus(mixed(samples.centre), view.point));
  const range = lengthOf(place);
  const up = unit(turned(view, mixed(samples.up)));
  const [east, north] = place;
  const away = Math.hypot(east, north);
  // Facing nobody knows where, it is shown from the side, as it is framed.
  const track: EastNorthUp =
    samples.headingKnown || away === 0
      ? unit(turned(view, mixed(samples.forward)))
      : [north / away, -east / away, 0];
  const turn = (angles: Float64Array) => {
    const a = angles[from] as number;
    const angle = a + ((angles[to] as number) - a) * t;
    return [Math.cos(angle), Math.sin(angle)] as const;
  };
  const [c, s] = turn(samples.attitude);
  const [level, upright] = [cross(up, track), along(scaled(up, c), track, -s)];
  // Banked about the nose: with the right wing down the left one rises, and the top leans to the right.
  const [cosBank, sinBank] = turn(samples.bank);
  return {
    at: place,
    forward: along(scaled(track, c), up, s),
    up: along(scaled(upright, cosBank), level, -sinBank),
    left: along(scaled(level, cosBank), upright, sinBank),
    range,
    headingKnown: samples.headingKnown,
  };
}

const unit = (v: Vec3): Vec3 => scaled(v, 1 / (lengthOf(v) || 1));
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The camera's axes as the framing has them: level, and rolled along the fuselage where the aircraft is overhead. */
export interface CameraAxes {
  readonly forward: EastNorthUp;
  readonly right: EastNorthUp;
  readonly top: EastNorthUp;
}

/** The camera that looks at a pose's centre. */
export function cameraOn({ at, forward: body }: Pose): CameraAxes {
  const forward = unit(at);
  const ground = Math.hypot(forward[0], forward[1]);
  let right: Vec3 = ground > 0 ? [forward[1] / ground, -forward[0] / ground, 0] : [1, 0, 0];
  if (Math.abs(forward[2]) > sinRollFrom) {
    const across = along(
      body,
      forward,
      -(body[0] * forward[0] + body[1] * forward[1] + body[2] * forward[2]),
    );
    if (lengthOf(across) > 0) right = unit(across);
  }
  return { forward, right, top: cross(right, forward) };
}

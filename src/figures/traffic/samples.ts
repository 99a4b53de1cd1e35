import { along, dot, minus, radiusAlong, type Frame, type Vec3 } from '../geometry/earth';
import { RAD } from '../geometry/angles';

/** m between samples along a path. */
export const sampleStep = 20;

/** More samples than 1,000 km of path need: beyond, they lie farther apart, still at multiples of 20 m. */
const mostSamples = 50_000;

/**
 * Samples of a path, in the order in which it is flown. Triples (x, y, z) are earth-centred metres or unit vectors.
 * Typed arrays, because every figure of every spot runs over all of them while a finger drags.
 */
export interface PathSamples {
  readonly count: number;
  readonly station: Float64Array;
  /** The aircraft's centre. */
  readonly centre: Float64Array;
  /** Direction of the track along the ground. */
  readonly forward: Float64Array;
  readonly up: Float64Array;
  /** Rise over run of the flight. */
  readonly slope: Float64Array;
  /** Nose attitude in radians above the horizontal. */
  readonly attitude: Float64Array;
  /** Bank in radians, positive with the right wing down. */
  readonly bank: Float64Array;
  /** m of the centre above the path's datum. */
  readonly height: Float64Array;
  /** m of horizontal length that the sample stands for. */
  readonly share: Float64Array;
  /** Ground speed in m/s, NaN where nobody knows. */
  readonly speed: Float64Array;
  /** 1 where its wheels are on the ground: on runway, taxi route or apron. */
  readonly onGround: Uint8Array;
  /** False where an aircraft stands and nobody has said which way it faces. */
  readonly headingKnown: boolean;
}

/** What a path says of one station. `attitude` and `bank` (right wing down, none unless said): degrees; `height`: m above the datum; `speed`: m/s, NaN where nobody knows. */
export interface SampleState {
  readonly centre: Vec3;
  readonly forward: Vec3;
  readonly up: Vec3;
  readonly slope: number;
  readonly attitude: number;
  readonly bank?: number;
  readonly height: number;
  readonly speed: number;
  readonly onGround: boolean;
}

/** Stations at exact multiples of 20 m between two ends, and both ends, from the first to the last. */
export function stationsBetween(from: number, to: number): number[] {
  const sign = Math.sign(to - from);
  if (sign === 0) return [from];
  const stations = [from];
  const edge = 1e-6;
  const step = sampleStep * Math.max(1, Math.ceil(Math.abs(to - from) / sampleStep / mostSamples));
  const steps = Math.abs(to - from) / step + 1;
  const first = sign > 0 ? Math.ceil((from + edge) / step) : Math.floor((from - edge) / step);
  for (let k = 0; k <= steps; k++) {
    const station = (first + sign * k) * step;
    if (sign * (to - station) <= edge) break;
    stations.push(station);
  }
  return [...stations, to];
}

/** Fills the arrays from a function of the station. */
export function sampled(
  stations: readonly number[],
  stateAt: (station: number) => SampleState,
  headingKnown = true,
): PathSamples {
  const count = stations.length;
  const samples: PathSamples = {
    count,
    station: Float64Array.from(stations),
    centre: new Float64Array(3 * count),
    forward: new Float64Array(3 * count),
    up: new Float64Array(3 * count),
    slope: new Float64Array(count),
    attitude: new Float64Array(count),
    bank: new Float64Array(count),
    height: new Float64Array(count),
    share: new Float64Array(count),
    speed: new Float64Array(count),
    onGround: new Uint8Array(count),
    headingKnown,
  };
  stations.forEach((station, i) => {
    const state = stateAt(station);
    samples.centre.set(state.centre, 3 * i);
    samples.forward.set(state.forward, 3 * i);
    samples.up.set(state.up, 3 * i);
    samples.slope[i] = state.slope;
    samples.attitude[i] = state.attitude * RAD;
    samples.bank[i] = (state.bank ?? 0) * RAD;
    samples.height[i] = state.height;
    samples.speed[i] = state.speed;
    samples.onGround[i] = state.onGround ? 1 : 0;
    const before = stations[i - 1] ?? station;
    const after = stations[i + 1] ?? station;
    samples.share[i] = Math.abs(after - before) / 2;
  });
  return samples;
}

/** Track direction and local up at a point placed in a frame, for a track along (east, north) there: carried along the curved earth. */
export function axesAt(
  frame: Frame,
  x: number,
  y: number,
  east: number,
  north: number,
): { forward: Vec3; up: Vec3 } {
  const s = Math.hypot(x, y);
  const direction = along(along([0, 0, 0], frame.east, east), frame.north, north);
  if (s === 0) return { forward: direction, up: frame.up };
  const [e, n] = [x / s, y / s];
  const outward = along(along([0, 0, 0], frame.east, e), frame.north, n);
  const arc = s / radiusAlong(frame, e, n);
  const [sin, cos] = [Math.sin(arc), Math.cos(arc)];
  const radial = e * east + n * north;
  const tilted = along(along([0, 0, 0], outward, cos - 1), frame.up, -sin);
  return {
    forward: along(direction, tilted, radial),
    up: along(along([0, 0, 0], frame.up, cos), outward, sin),
  };
}

/** The part of `direction` that is level where `up` is up, as a unit vector. */
export function levelled(direction: Vec3, up: Vec3): Vec3 {
  const level = along(direction, up, -dot(direction, up));
  const length = Math.hypot(level[0], level[1], level[2]);
  return length > 0 ? [level[0] / length, level[1] / length, level[2] / length] : level;
}

export const between = (a: Vec3, b: Vec3, t: number): Vec3 => along(a, minus(b, a), t);

import { dot, type Vec3 } from '../../figures/geometry/earth';
import { acosDeg, RAD } from '../../figures/geometry/angles';
import { bankedFrom } from '../../figures/practice';
import type { PathSamples } from '../../figures/traffic/samples';

/** What rounding may add, m or radians. */
const slack = 1e-3;

/** Radians by which nose and wings are off the level of the place, seen from the earth's centre, at most. */
export function tiltOf({ count, centre, forward, up, attitude, bank }: PathSamples): number {
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

/** Some successive samples of a path. */
export function partOf(samples: PathSamples, from: number, to: number): PathSamples {
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

/**
 * The way in which samples are flown (earth-centred unit vector), and the degrees by which any of them differs. As `PathInView`
 * has it for the aspect: forward, and up by the slope.
 */
export function wayOf({ count, forward, up, slope }: PathSamples): readonly number[] {
  const ways = Array.from({ length: count }, (_, i) => {
    const [x, y, z] = [0, 1, 2].map(
      (axis) => (forward[3 * i + axis] as number) + (slope[i] as number) * (up[3 * i + axis] as number),
    ) as [number, number, number];
    const long = Math.hypot(x, y, z);
    return [x / long, y / long, z / long] as const;
  });
  return spread(ways);
}

/**
 * The direction to the left of samples (earth-centred unit vector), as `PathInView` has it, and the degrees by which any of them
 * differs: all round where one is banked so steeply that its top or its underside is seen.
 */
export function leftOf({ count, forward, up, bank }: PathSamples): readonly number[] {
  const [x = 0, y = 0, z = 0, apart = 0] = spread(
    Array.from({ length: count }, (_, i) => leftAt(forward, up, i)),
  );
  const isSteep = bank.some((radians) => Math.abs(radians) >= bankedFrom * RAD - slack);
  return [x, y, z, isSteep ? 180 : apart];
}

/** Left is up x forward. */
export function leftAt(forward: Float64Array, up: Float64Array, i: number): Vec3 {
  const [hx, hy, hz] = [0, 1, 2].map((axis) => forward[3 * i + axis] as number) as [number, number, number];
  const [vx, vy, vz] = [0, 1, 2].map((axis) => up[3 * i + axis] as number) as [number, number, number];
  return [vy * hz - vz * hy, vz * hx - vx * hz, vx * hy - vy * hx];
}

function spread(all: readonly Vec3[]): readonly number[] {
  const middle = all[Math.floor(all.length / 2)] as Vec3;
  const apart = all.map(([x, y, z]) => acosDeg(x * middle[0] + y * middle[1] + z * middle[2]));
  return [...middle, Math.max(...apart)];
}

/** Numbers of `rodOf`. */
export const perRod = 8;

/**
 * A rod that holds all samples: its middle and its direction (earth-centred), half its length in m, and how far from its axis
 * any sample is.
 */
export function rodOf(centre: Float64Array): readonly number[] {
  const all = Array.from({ length: centre.length / 3 }, (_, i): Vec3 => [
    centre[3 * i] as number,
    centre[3 * i + 1] as number,
    centre[3 * i + 2] as number,
  ]);
  const [first, last] = [all[0] as Vec3, all.at(-1) as Vec3];
  const between = [last[0] - first[0], last[1] - first[1], last[2] - first[2]] as const;
  const long = Math.hypot(...between);
  const axis: Vec3 = long > 0 ? [between[0] / long, between[1] / long, between[2] / long] : [1, 0, 0];
  const from = (p: Vec3): Vec3 => [p[0] - first[0], p[1] - first[1], p[2] - first[2]];
  const along = all.map((p) => dot(from(p), axis));
  const half = (Math.min(...along) + Math.max(...along)) / 2;
  const middle: Vec3 = [first[0] + half * axis[0], first[1] + half * axis[1], first[2] + half * axis[2]];
  const bow = all.map((p, i) => {
    const [x, y, z] = from(p);
    const s = along[i] as number;
    return Math.hypot(x - s * axis[0], y - s * axis[1], z - s * axis[2]);
  });
  return [...middle, ...axis, Math.max(...along) - half + slack, Math.max(...bow) + slack];
}

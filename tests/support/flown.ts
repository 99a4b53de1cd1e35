import { alongRunway } from '../../src/figures/geometry/along-runway';
import { dot, earthCentred, frameAt, minus, positionOf, type Vec3 } from '../../src/figures/geometry/earth';
import { everyPath } from '../../src/figures/traffic/every-path';
import type { Path } from '../../src/figures/traffic/paths';
import type { Contents } from '../../src/survey/contents';
import type { Runway } from '../../src/survey/schema/runway';

/** A path of the survey by the name that the figures print. */
export function pathNamed(contents: Contents, name: string): Path {
  const paths = everyPath(contents, () => true, null);
  const found = paths.find((p) => p.ref.path === name);
  if (!found) throw new Error(`expected ${name}, got ${paths.map((p) => p.ref.path).join(', ')}`);
  return found;
}

export interface Place {
  readonly station: number;
  /** m from the runway's position 0 along its line, and right (+) or left (-) of it. */
  readonly along: number;
  readonly offset: number;
  /** m above mean sea level of the centre. */
  readonly elevation: number;
  /** Degrees: nose above the horizontal, right wing down, and the climb of the path. */
  readonly attitude: number;
  readonly bank: number;
  readonly climb: number;
  /** Degrees from true north. */
  readonly track: number;
  readonly height: number;
  readonly speed: number;
}

/** Where a path's samples are, told in the terms of a runway. */
export function placesOf({ samples }: Path, runway: Runway): Place[] {
  const degrees = (radians: number) => (radians * 180) / Math.PI;
  return Array.from(samples.station, (station, i): Place => {
    const centre = [...samples.centre.subarray(3 * i, 3 * i + 3)] as unknown as Vec3;
    const forward = [...samples.forward.subarray(3 * i, 3 * i + 3)] as unknown as Vec3;
    const position = positionOf(centre);
    const frame = frameAt(position);
    const place = alongRunway(runway, position);
    if (!place) throw new Error('expected a runway with a direction');
    return {
      station,
      along: place.station,
      offset: place.offset,
      elevation: dot(minus(centre, earthCentred(position, 0)), frame.up),
      attitude: degrees(samples.attitude[i] ?? NaN),
      bank: degrees(samples.bank[i] ?? NaN),
      climb: degrees(Math.atan(samples.slope[i] ?? NaN)),
      track: (degrees(Math.atan2(dot(forward, frame.east), dot(forward, frame.north))) + 360) % 360,
      height: samples.height[i] ?? NaN,
      speed: samples.speed[i] ?? NaN,
    };
  });
}

/** The place at a station; there must be one within a millimetre. */
export function placeAt(places: readonly Place[], station: number): Place {
  const found = places.find((p) => Math.abs(p.station - station) < 1e-3);
  if (!found) throw new Error(`expected a sample at station ${station}`);
  return found;
}

import type { Position } from '../../src/survey/document';
import { frameAt, along, earthCentred, type Vec3 } from '../../src/figures/geometry/earth';
import type { Path } from '../../src/figures/traffic/paths';
import { sampled, type SampleState } from '../../src/figures/traffic/samples';
import type { Eye } from '../../src/figures/spot/eye-at';

/** An eye `height` m above the ellipsoid. */
export function eyeOver(position: Position, height: number): Eye {
  const frame = frameAt(position);
  return { frame, point: along(frame.origin, frame.up, height) };
}

/** A path of one sample: an aircraft over a position, level, its nose to a true heading in degrees. */
export function oneSamplePath(
  position: Position,
  height: number,
  heading: number,
  change: Partial<SampleState> = {},
): Path {
  const frame = frameAt(position);
  const radians = (heading * Math.PI) / 180;
  const forward: Vec3 = along(
    along([0, 0, 0], frame.east, Math.sin(radians)),
    frame.north,
    Math.cos(radians),
  );
  const state: SampleState = {
    centre: earthCentred(position, height),
    forward,
    up: frame.up,
    slope: 0,
    attitude: 0,
    height: 0,
    speed: 60,
    onGround: false,
    ...change,
  };
  return {
    ref: { path: 'one', kind: 'flight-path', runway: null, end: null },
    name: 'one',
    samples: sampled([0], () => state),
  };
}

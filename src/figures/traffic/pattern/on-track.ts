import { placed, type Frame } from '../../geometry/earth';
import { bankOf } from '../turn-physics';
import { axesAt, type SampleState } from '../samples';
import type { TrackPlace } from './track';

/** A plane that a track is told in: where it begins in a frame, and the unit direction that is ahead. m. */
export interface Plane {
  readonly frame: Frame;
  readonly x: number;
  readonly y: number;
  readonly east: number;
  readonly north: number;
}

/**
 * Where the centre is, which way it flies and how it is banked: what speed (m/s) and radius ask of a coordinated
 * turn. `height`: m above mean sea level of the centre.
 */
export function onTrack(
  { frame, x: x0, y: y0, east, north }: Plane,
  { u, v, du, dv, curvature }: TrackPlace,
  height: number,
  speed: number,
): Pick<SampleState, 'centre' | 'forward' | 'up' | 'bank'> {
  // Left of (east, north) is (-north, east).
  const [x, y] = [x0 + u * east - v * north, y0 + u * north + v * east];
  return {
    centre: placed(frame, x, y, height),
    ...axesAt(frame, x, y, du * east - dv * north, du * north + dv * east),
    // Turning left, the left wing is down.
    bank: curvature === 0 ? 0 : -Math.sign(curvature) * bankOf(speed, 1 / Math.abs(curvature)),
  };
}

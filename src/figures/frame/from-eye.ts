import type { Position } from '../../survey/document';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { along, dot, earthCentred, frameAt, minus, type Frame, type Vec3 } from '../geometry/earth';

/** m to the east, to the north and up from an eye, along the axes there. */
export type EastNorthUp = readonly [east: number, north: number, up: number];

/** Where somebody looks from. */
export interface ViewPoint {
  readonly frame: Frame;
  /** Earth-centred, m. */
  readonly point: Vec3;
  readonly position: Position;
  /** m above mean sea level of the ground under the eye. */
  readonly ground: number;
  readonly eyeHeight: number;
}

/** The eye of somebody at a spot on ground at a height in m above mean sea level. */
export function viewPoint(spot: StandingSpot, ground: number): ViewPoint {
  const frame = frameAt(spot.position);
  const point = along(frame.origin, frame.up, ground + spot.eyeHeight);
  return { frame, point, position: spot.position, ground, eyeHeight: spot.eyeHeight };
}

/** A direction or difference of places, turned into the axes at the eye. */
export const turned = ({ frame }: ViewPoint, v: Vec3): EastNorthUp => [
  dot(v, frame.east),
  dot(v, frame.north),
  dot(v, frame.up),
];

/** A position at a height in m above mean sea level, as seen from the eye. */
export const placeFrom = (view: ViewPoint, position: Position, height: number): EastNorthUp =>
  turned(view, minus(earthCentred(position, height), view.point));

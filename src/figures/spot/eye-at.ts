import type { StandingSpot } from '../../survey/schema/standing-spot';
import { along, frameAt, type Frame, type Vec3 } from '../geometry/earth';

/** A photographer's eye: earth-centred position and the directions of east, north and up there. */
export interface Eye {
  readonly point: Vec3;
  readonly frame: Frame;
}

/** The eye of somebody at a spot. `elevation`: m above mean sea level of the eye. */
export interface EyeThere extends Eye {
  readonly elevation: number;
}

/** `ground`: m above mean sea level under the spot. */
export function eyeAt(spot: StandingSpot, ground: number): EyeThere {
  const frame = frameAt(spot.position);
  const elevation = ground + spot.eyeHeight;
  return { frame, elevation, point: along(frame.origin, frame.up, elevation) };
}

import type { Position } from '../../survey/document';
import { lastAnswer } from '../../survey/memo';
import { frameAt, inFrame, radiusAlong, type Frame, type Vec3 } from '../geometry/earth';

/** The site frame about a survey's reference; the same object as long as the reference stays. */
export const siteFrame: (reference: Position) => Frame = lastAnswer((reference: Position) =>
  frameAt(reference),
);

/** East and north in m along the curved earth, and m above mean sea level, of an earth-centred point: the inverse of `placed`. */
export function siteCoordinates(frame: Frame, point: Vec3): readonly [x: number, y: number, height: number] {
  const [e, n, u] = inFrame(frame, point);
  const out = Math.hypot(e, n);
  if (out === 0) return [0, 0, u];
  const radius = radiusAlong(frame, e / out, n / out);
  const scale = (radius * Math.atan2(out, radius + u)) / out;
  // Written so that nothing is lost: hypot(out, radius + u) - radius.
  const beyond = out * out + u * (2 * radius + u);
  return [e * scale, n * scale, beyond / (Math.hypot(out, radius + u) + radius)];
}

import type { Subject } from '../../survey/schema/subject';
import { along, dot } from '../geometry/earth';
import { framedPoints } from '../optics/framed-points';
import type { FormationPlace } from '../traffic/formation';
import type { EastNorthUp } from './from-eye';
import type { CameraAxes, Pose } from './pose';

/** Where something appears in a picture: tangents of the angles from the camera's axis to the right and up. */
export type Seen = readonly [right: number, up: number];

/** Where a direction appears; null for what is not ahead. */
export function seenAt(direction: EastNorthUp, { forward, right, top }: CameraAxes): Seen | null {
  const ahead = dot(direction, forward);
  return ahead > 0 ? [dot(direction, right) / ahead, dot(direction, top) / ahead] : null;
}

/** Where the points appear by which an aircraft is framed that flies at a place; those that are not ahead left out. */
export function pointsSeen(
  subject: Subject,
  pose: Pose,
  place: FormationPlace,
  camera: CameraAxes,
): readonly Seen[] {
  const { points } = framedPoints(subject, 'whole', pose.headingKnown);
  const at = (metres: FormationPlace) => {
    const level = along(along(pose.at, pose.forward, metres[0]), pose.left, metres[1]);
    return along(level, pose.up, metres[2]);
  };
  return Array.from({ length: points.length / 3 }, (_, i) => {
    const [x, y, z] = points.subarray(3 * i, 3 * i + 3) as unknown as FormationPlace;
    return seenAt(at([place[0] + x, place[1] + y, place[2] + z]), camera);
  }).filter((seen) => seen !== null);
}

/** The middle of what points take of a picture, each way. */
export function middleSeen(points: readonly Seen[]): Seen {
  const middle = (k: 0 | 1) =>
    (Math.min(...points.map((point) => point[k])) + Math.max(...points.map((point) => point[k]))) / 2;
  return points.length === 0 ? [0, 0] : [middle(0), middle(1)];
}

/** Whether a place in a picture lies within the tightest outline round points that has no dents. */
export function isAmong([right, up]: Seen, points: readonly Seen[]): boolean {
  // From within, points are to be seen all round: no half of the circle is empty.
  const bearings = points.map((p) => Math.atan2(p[1] - up, p[0] - right)).sort((a, b) => a - b);
  return (
    bearings.length > 0 &&
    bearings.every((bearing, i) => {
      const next = bearings[i + 1] ?? (bearings[0] as number) + 2 * Math.PI;
      return next - bearing < Math.PI;
    })
  );
}

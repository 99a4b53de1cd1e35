import type { Body, Kit } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { DEG } from '../geometry/angles';
import type { FormationPlace } from '../traffic/formation';
import { framedPoints, pointsOfAll, type FramedPoints } from './framed-points';

/** How the camera is held, and what of the aircraft is to fill the frame. */
export interface Hold {
  readonly portrait: boolean;
  readonly part: 'whole' | 'nose' | 'tail' | 'formation';
}
export const landscape: Hold = { portrait: false, part: 'whole' };

/** What must be known to frame a subject: its size in m, the share of the sensor it is to fill, the sensor in mm. */
export interface Framing {
  readonly length: number;
  readonly height: number;
  /** What is framed where it is known which way the aircraft faces, and where it is not. */
  readonly facing: FramedPoints;
  readonly anyWay: FramedPoints;
  /** m from the centre to the farthest of the points that are framed. */
  readonly radius: number;
  readonly fill: number;
  readonly sensorWidth: number;
  readonly sensorHeight: number;
}

/** `places`: where those fly that are framed as a formation; without them the one subject is framed. */
export function framingOf(
  subject: Subject,
  body: Body,
  fill: Kit['fill'],
  { portrait, part }: Hold = landscape,
  places: readonly FormationPlace[] | null = null,
): Framing {
  const own = part === 'formation' ? 'whole' : part;
  const inAll = (points: FramedPoints) =>
    part === 'formation' && places ? pointsOfAll(points, places) : points;
  const facing = inAll(framedPoints(subject, own, true));
  const anyWay = inAll(framedPoints(subject, own, false));
  return {
    length: subject.length,
    height: subject.height,
    facing,
    anyWay,
    radius: Math.max(facing.radius, anyWay.radius),
    fill,
    sensorWidth: portrait ? body.sensorHeight : body.sensorWidth,
    sensorHeight: portrait ? body.sensorWidth : body.sensorHeight,
  };
}

/** Diagonal of the 36 x 24 mm frame (ISO 1007), in mm: the 35 mm equivalent goes by diagonals. */
const diagonal35 = Math.hypot(36, 24);

export const equivalent35 = (focalLength: number, { sensorWidth, sensorHeight }: Framing): number =>
  (focalLength * diagonal35) / Math.hypot(sensorWidth, sensorHeight);

/** Half the diagonal angle of the frame in degrees at a focal length in mm, focus at infinity. */
export const halfDiagonal = (focalLength: number, { sensorWidth, sensorHeight }: Framing): number =>
  Math.atan(Math.hypot(sensorWidth, sensorHeight) / (2 * focalLength)) * DEG;

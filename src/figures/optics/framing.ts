import type { Body, Kit } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { DEG } from '../geometry/angles';

/** How the camera is held, and what of the aircraft is to fill the frame. */
export interface Hold {
  readonly portrait: boolean;
  readonly part: 'whole' | 'nose' | 'tail';
}
export const landscape: Hold = { portrait: false, part: 'whole' };

/** What must be known to frame a subject: its size in m, the share of the sensor it is to fill, the sensor in mm. */
export interface Framing {
  readonly length: number;
  readonly span: number;
  readonly height: number;
  /** m from the centre to the farthest of the points that are framed. */
  readonly radius: number;
  readonly fill: number;
  readonly sensorWidth: number;
  readonly sensorHeight: number;
  readonly part: Hold['part'];
}

export const framingOf = (
  subject: Subject,
  body: Body,
  fill: Kit['fill'],
  hold: Hold = landscape,
): Framing => ({
  length: subject.length,
  span: subject.span,
  height: subject.height,
  radius: Math.max(
    subject.length / 2,
    subject.span / 2,
    Math.hypot(0.45 * subject.length, subject.height / 2),
  ),
  fill,
  sensorWidth: hold.portrait ? body.sensorHeight : body.sensorWidth,
  sensorHeight: hold.portrait ? body.sensorWidth : body.sensorHeight,
  part: hold.part,
});

/** Diagonal of the 36 x 24 mm frame (ISO 1007), in mm: the 35 mm equivalent goes by diagonals. */
const diagonal35 = Math.hypot(36, 24);

export const equivalent35 = (focalLength: number, { sensorWidth, sensorHeight }: Framing): number =>
  (focalLength * diagonal35) / Math.hypot(sensorWidth, sensorHeight);

/** Half the diagonal angle of the frame in degrees at a focal length in mm, focus at infinity. */
export const halfDiagonal = (focalLength: number, { sensorWidth, sensorHeight }: Framing): number =>
  Math.atan(Math.hypot(sensorWidth, sensorHeight) / (2 * focalLength)) * DEG;

import type { Body, Kit } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { DEG, RAD } from '../geometry/angles';
import type { FormationPlace } from '../traffic/formation';
import { framedPoints, pointsOfAll, type FramedPoints } from './framed-points';

/** Sine of the elevation above which the camera is rolled so that the fuselage lies along the long side (design, section 3). */
export const sinRollFrom = Math.sin(75 * RAD);

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
  /** m from the centre that they reach at most ahead or behind, to a side, and up or down. */
  readonly reaching: { readonly along: number; readonly across: number; readonly up: number };
  readonly fill: number;
  readonly sensorWidth: number;
  readonly sensorHeight: number;
  /** mm of the sensor from corner to corner. */
  readonly diagonal: number;
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
    reaching: {
      along: Math.max(farthest(facing, 0), farthest(anyWay, 0)),
      across: Math.max(farthest(facing, 1), farthest(anyWay, 1)),
      up: Math.max(farthest(facing, 2), farthest(anyWay, 2)),
    },
    fill,
    sensorWidth: portrait ? body.sensorHeight : body.sensorWidth,
    sensorHeight: portrait ? body.sensorWidth : body.sensorHeight,
    diagonal: Math.hypot(body.sensorWidth, body.sensorHeight),
  };
}

const farthest = ({ points }: FramedPoints, axis: 0 | 1 | 2): number =>
  points.reduce((most, metres, k) => (k % 3 === axis ? Math.max(most, Math.abs(metres)) : most), 0);

/** Diagonal of the 36 x 24 mm frame (ISO 1007), in mm: the 35 mm equivalent goes by diagonals. */
const diagonal35 = Math.hypot(36, 24);

export const equivalent35 = (focalLength: number, { diagonal }: Framing): number =>
  (focalLength * diagonal35) / diagonal;

/** Half the diagonal angle of the frame in degrees at a focal length in mm, focus at infinity. */
export const halfDiagonal = (focalLength: number, { diagonal }: Framing): number =>
  Math.atan(diagonal / (2 * focalLength)) * DEG;

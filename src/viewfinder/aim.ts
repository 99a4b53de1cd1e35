import { Vector3, type PerspectiveCamera } from 'three';
import type { Picture } from '../figures/frame/picture';
import { DEG, RAD } from '../survey/angles';
import { placedBy, toDrawing } from './axes';
import { nearPlane } from './near-plane';

/** Degrees by which the camera is turned away from the aircraft: to the right, and up. */
export interface Pan {
  readonly right: number;
  readonly up: number;
}
export const straight: Pan = { right: 0, up: 0 };

/** A pinhole camera at the eye: its picture agrees with the framing of the figures. `wall`: m to what stands nearest. */
export function aim(
  pinhole: PerspectiveCamera,
  { camera, lens, pose, places, scenery }: Picture,
  pan: Pan,
  aspect: number,
  wall: number,
): void {
  const forward = toDrawing(camera.forward);
  const right = toDrawing(camera.right);
  const top = toDrawing(camera.top);
  forward.applyAxisAngle(top, -pan.right * RAD);
  right.applyAxisAngle(top, -pan.right * RAD);
  forward.applyAxisAngle(right, pan.up * RAD);
  top.applyAxisAngle(right, pan.up * RAD);
  const { focalLength, sensorWidth, sensorHeight } = lens;
  // The canvas may differ from the sensor's shape by a rounded pixel: the long side of the picture counts.
  const height = sensorWidth > sensorHeight ? sensorWidth / aspect : sensorHeight;
  pinhole.fov = 2 * Math.atan(height / (2 * focalLength)) * DEG;
  pinhole.aspect = aspect;
  const corner = Math.atan(Math.hypot(height, height * aspect) / (2 * focalLength));
  const apart = Math.max(...places.map((place) => Math.hypot(...place)));
  const lowest = corner - Math.asin(Math.max(-1, Math.min(1, forward.y)));
  pinhole.near = nearPlane(Math.max(0, pose.range - apart), wall, scenery.ground, lowest);
  pinhole.far = 60_000;
  pinhole.matrixAutoUpdate = false;
  pinhole.matrix.copy(placedBy(right, top, forward.negate(), new Vector3()));
  pinhole.matrixWorldNeedsUpdate = true;
  pinhole.updateProjectionMatrix();
}

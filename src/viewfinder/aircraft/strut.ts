import { CylinderGeometry } from 'three';

/** A thin strut between two points. */
export function strutBetween(
  a: readonly [number, number, number],
  b: readonly [number, number, number],
  radius: number,
) {
  const [dx, dy, dz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const length = Math.hypot(dx, dy, dz);
  const strut = new CylinderGeometry(radius, radius, length, 6).translate(0, length / 2, 0);
  // From straight up to the way it goes.
  strut.rotateX(Math.acos(dy / length)).rotateY(Math.atan2(dx, dz));
  return strut.translate(...a);
}

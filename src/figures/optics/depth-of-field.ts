import type { Body } from '../../survey/schema/kit';
import { confusionShare } from '../practice';

/** Circle of confusion in mm that passes for sharp on a sensor. */
export const circleOfConfusion = ({ sensorWidth, sensorHeight }: Body): number =>
  Math.hypot(sensorWidth, sensorHeight) / confusionShare;

/** Hyperfocal distance in m: H = f^2 / (N c) + f. `focalLength` and `confusion` in mm. */
export const hyperfocal = (focalLength: number, aperture: number, confusion: number): number =>
  ((focalLength * focalLength) / (aperture * confusion) + focalLength) / 1000;

/** The nearest and the farthest distance in m that are sharp; `far` null for infinity. */
export interface DepthOfField {
  readonly near: number;
  readonly far: number | null;
}

/**
 * Depth of field about a focus at `distance` m (Ray, Applied Photographic Optics, the thin lens):
 * near = s (H - f) / (H + s - 2 f), far = s (H - f) / (H - s), infinite from the hyperfocal distance on.
 */
export function depthOfField(
  focalLength: number,
  aperture: number,
  distance: number,
  confusion: number,
): DepthOfField {
  const h = hyperfocal(focalLength, aperture, confusion);
  const f = focalLength / 1000;
  return {
    near: (distance * (h - f)) / (h + distance - 2 * f),
    far: distance >= h ? null : (distance * (h - f)) / (h - distance),
  };
}

/**
 * The widest aperture (f-number) whose depth of field reaches `before` m in front of a focus at `distance` m; what
 * lies as far behind is sharp as well. 0 where nothing needs to be covered, null where no aperture does.
 */
export function apertureForDepth(
  focalLength: number,
  distance: number,
  before: number,
  confusion: number,
): number | null {
  if (before <= 0) return 0;
  if (before >= distance) return null;
  const f = focalLength / 1000;
  // near = distance - before, solved for the hyperfocal distance.
  const h = (distance * (distance - f)) / before - distance + 2 * f;
  return h > f ? (focalLength * focalLength) / (confusion * (h - f) * 1000) : null;
}

import type { PhotoRecord } from '../../survey/photo-record';
import type { Body } from '../../survey/schema/kit';
import { usualPixels } from './practice';

/** Why nobody knows how large a pixel of a picture was on the sensor. */
export type NoPitch = 'resized' | 'smaller' | 'cropped';

/** Shares to which two scales, and two shapes of a picture, are taken for the same. CP. */
const sameScale = 0.03;
const sameShape = 0.01;

interface Size {
  readonly width: number;
  readonly height: number;
}
const long = ({ width, height }: Size) => Math.max(width, height);
const shape = (size: Size) => long(size) / Math.min(size.width, size.height);
const near = (a: number, b: number, share: number) => Math.abs(a / b - 1) <= share;

/**
 * Pixels a mm of the sensor: as the camera wrote it, else the body's if the picture is as wide as its sensor (design part
 * two, section 12). Turned pictures count by their longer side. A picture that was made smaller since tells nothing.
 */
export function pixelsPerMm(
  { pixelsPerMm: written, width, height }: Pick<PhotoRecord, 'pixelsPerMm' | 'width' | 'height'>,
  shown: Size,
  body: Pick<Body, 'sensorWidth' | 'sensorHeight' | 'pixelsWide' | 'pixelsHigh'>,
): number | NoPitch {
  if (width !== null && height !== null && long({ width, height }) !== long(shown)) return 'resized';
  const sensor = { width: body.pixelsWide, height: body.pixelsHigh };
  const own = long(sensor) / Math.max(body.sensorWidth, body.sensorHeight);
  if (written !== null && written >= usualPixels.least && written <= usualPixels.most) {
    // Programs that make a picture smaller leave this member as the camera wrote it; those that crop change the shape.
    const whole = near(shape(shown), shape(sensor), sameShape);
    const smaller = long(shown) < long(sensor) * (1 - sameScale);
    return near(written, own, sameScale) && whole && smaller ? 'smaller' : written;
  }
  return long(shown) === long(sensor) ? own : 'cropped';
}

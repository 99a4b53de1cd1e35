import type { Bounds } from './map-surface';
import { RAD } from '../figures/geometry/angles';
import { degreesPerPixel } from './screen';

/** Web Mercator's northing of a latitude, in degrees of longitude (EPSG:3857). */
const northing = (lat: number): number => Math.asinh(Math.tan(lat * RAD)) / RAD;

/** The largest zoom at which bounds take no more than so many px each way. */
export function zoomToShow(
  [[west, south], [east, north]]: Bounds,
  { width, height }: { readonly width: number; readonly height: number },
): number {
  const perPixel = Math.max((east - west) / width, (northing(north) - northing(south)) / height);
  return Math.log2(degreesPerPixel(0) / perPixel);
}

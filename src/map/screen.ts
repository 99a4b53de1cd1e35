import { RAD } from '../figures/geometry/angles';

/** Pixels round the world at zoom 0, the map library's tile size. */
const worldPixels = 512;
/** WGS84 equatorial radius in m, on which web maps are projected as if on a sphere. */
const mapRadius = 6378137;

/** Degrees of longitude that a pixel covers. */
export const degreesPerPixel = (zoom: number): number => 360 / (worldPixels * 2 ** zoom);

/** Metres on the ground that a pixel covers at a latitude in degrees; half a percent off the ellipsoid at most. */
export const metresPerPixel = (lat: number, zoom: number): number =>
  (2 * Math.PI * mapRadius * Math.cos(lat * RAD)) / (worldPixels * 2 ** zoom);

/**
 * Things of constant size on screen are recomputed at quarter steps of zoom, not continuously: between two steps they
 * are at most 9 % too large or too small, which nobody sees.
 */
export const zoomStepOf = (zoom: number): number => Math.round(zoom * 4) / 4;

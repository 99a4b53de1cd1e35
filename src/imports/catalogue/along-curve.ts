import { placesPerDegree } from './columns';

/**
 * The curve of D. Hilbert (Mathematische Annalen 38, 1891) fills a square without a leap: what is near along it is near on
 * the ground. So airfields in its order differ from the one before by one small number in place of two.
 */

/** The square has 2^22 fields a side, a ten-thousandth of a degree each: 419 degrees, more than the earth needs. */
const levels = 22;
const side = 2 ** levels;
export const wholeCurve = side * side;

/** [longitude, latitude] in whole ten-thousandths of a degree -> how far along the curve, in fields. */
export function alongCurve([lng, lat]: readonly [number, number]): number {
  let x = lng + 180 * placesPerDegree;
  let y = lat + 90 * placesPerDegree;
  let along = 0;
  for (let s = side >> 1; s > 0; s >>= 1) {
    const east = (x & s) > 0 ? 1 : 0;
    const north = (y & s) > 0 ? 1 : 0;
    along += s * s * ((3 * east) ^ north);
    x &= s - 1;
    y &= s - 1;
    if (north === 0) [x, y] = east === 1 ? [s - 1 - y, s - 1 - x] : [y, x];
  }
  return along;
}

/** The way back: the place at each distance along the curve, in columns, since there are tens of thousands. */
export function placesOnCurve(along: Float64Array): { readonly lng: Int32Array; readonly lat: Int32Array } {
  const lng = new Int32Array(along.length);
  const lat = new Int32Array(along.length);
  for (let i = 0; i < along.length; i++) {
    const distance = along[i] as number;
    let x = 0;
    let y = 0;
    // Two halves, each small enough for whole-number arithmetic.
    let rest = distance % side;
    for (let level = 0; level < levels; level++) {
      if (level === levels / 2) rest = Math.floor(distance / side);
      const s = 1 << level;
      const east = (rest >> 1) & 1;
      const north = (rest & 1) ^ east;
      if (north === 0) {
        const was = x;
        x = east === 1 ? s - 1 - y : y;
        y = east === 1 ? s - 1 - was : was;
      }
      x += s * east;
      y += s * north;
      rest >>= 2;
    }
    lng[i] = x - 180 * placesPerDegree;
    lat[i] = y - 90 * placesPerDegree;
  }
  return { lng, lat };
}

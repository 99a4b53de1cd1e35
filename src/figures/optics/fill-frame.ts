import type { Framing } from './framing';

/**
 * How an aircraft lies before a camera, in one array: in hot loops numbers handed on make no garbage. Its nose, left wing and fin
 * as unit vectors to the camera's right, its top, and ahead; m to its centre; and, told by `fillFrame`, the focal length in mm.
 */
export const noseRight = 0;
export const noseTop = 1;
export const noseAhead = 2;
export const wingRight = 3;
export const wingTop = 4;
export const wingAhead = 5;
export const finRight = 6;
export const finTop = 7;
export const finAhead = 8;
export const bodyRange = 9;
export const bodyFocal = 10;
export const bodySize = 11;

/**
 * The focal length that frames an aircraft: its points (`FramedPoints`) are projected, and the shorter of the two focal lengths
 * counts that let the projected width and the projected height each take `fill` of the sensor. NaN where the eye is inside it.
 */
export function fillFrame(body: Float64Array, framing: Framing, headingKnown: boolean): void {
  const range = body[bodyRange] as number;
  const br = body[noseRight] as number;
  const bq = body[noseTop] as number;
  const bf = body[noseAhead] as number;
  const lr = body[wingRight] as number;
  const lq = body[wingTop] as number;
  const lf = body[wingAhead] as number;
  const tr = body[finRight] as number;
  const tq = body[finTop] as number;
  const tf = body[finAhead] as number;
  // A point behind the lens means that the eye is inside the aircraft. The axis meets the centre, which always counts.
  const { points, counts } = headingKnown ? framing.facing : framing.anyWay;
  let left = 0;
  let right = 0;
  let low = 0;
  let high = 0;
  for (let p = 0, at = 0; p < counts.length; p++, at += 3) {
    const x = points[at] as number;
    const y = points[at + 1] as number;
    const z = points[at + 2] as number;
    const depth = range + x * bf + y * lf + z * tf;
    if (!(depth > 0)) {
      body[bodyFocal] = NaN;
      return;
    }
    if (counts[p] === 0) continue;
    const across = (x * br + y * lr + z * tr) / depth;
    const above = (x * bq + y * lq + z * tq) / depth;
    if (across < left) left = across;
    if (across > right) right = across;
    if (above < low) low = above;
    if (above > high) high = above;
  }
  const byWidth = framing.sensorWidth / (right - left);
  body[bodyFocal] = framing.fill * Math.min(byWidth, framing.sensorHeight / (high - low));
}

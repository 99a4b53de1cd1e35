/** What passes are told apart and matched by: design part two, section 12, unless marked CP. */

/** ms between two frames of one camera that may still be of one pass, and of a pass beyond which it is asked. */
export const passGap = 20_000;
export const longPass = 90_000;
/** m within which a receiver's position is that of a spot, and from the airfield beyond which a frame is of something else. */
export const spotWithin = 100;
export const siteWithin = 20_000;
/** ms within which a second movement leaves open which of the two it was. */
export const movementsApart = 3 * 60_000;
/** ms from the time at which a movement was due beyond which it is not taken for it. CP. */
export const movementWithin = 20 * 60_000;

/** px by which a mark may be off, degrees by which the angle, share by which the engraved focal length is (section 12). */
export const markWithin = 3;
export const angleWithin = 1;
export const focalWithin = 0.02;
/** Degrees between axis and sight line below which a span is too foreshortened to be measured, and of elevation above which a range says something of height. */
export const leastAngle = 30;
export const leastElevation = 30;
/** Degrees to which one sees that an aircraft is side-on. CP. */
export const sideOnWithin = 10;
/** Pixels a mm that sensors have: pitches of 1 to 20 µm. CP. */
export const usualPixels = { least: 50, most: 1000 } as const;

/** Rating from which a pass counts as a keeper. CP. */
export const keeper = 3;

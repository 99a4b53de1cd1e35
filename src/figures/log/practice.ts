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

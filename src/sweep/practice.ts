/** Values of the sweep. Where nothing else is said they are the design's (section 10); CP: common practice, no source. */

/** m to a side of the area that is looked over, and m beyond the runways. */
export const leastSide = 4_000;
export const mostSide = 12_000;
export const roomRound = 3_000;
/** m to a side of a cell: usual, finest, coarsest. */
export const usualCell = 20;
export const finestCell = 5;
export const coarsestCell = 100;
/** s from instant to instant. */
export const usualStep = 900;

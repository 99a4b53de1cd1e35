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
/** m from a runway's centreline and its ends where nobody stands, by the runway's length in m (the first that it is under). */
export const runwayClear = [
  { under: 800, clear: 30 },
  { under: 1200, clear: 40 },
  { under: Infinity, clear: 75 },
] as const;
/** m from taxi routes and aprons, and from rails and motorways, where nobody stands. CP. */
export const taxiClear = 40;
export const railClear = 15;
/** m from a line of water, and of a way whose access says no, that count as it. CP. */
export const lineHalfWidth = 5;
/** m under a building from which people walk beneath it, and m from a way's line there that count as its passage. CP. */
export const headroom = 2;
export const arcadeHalfWidth = 3;
/** m from a spot of the survey within which its own access holds: refused or forbidden, to be asked for, its hours. CP. */
export const atSpot = 20;
/**
 * Rotor diameters about a helipad where nobody stands, for the downwash (FAA AC 90-23 keeps small aircraft three rotor diameters
 * from a hovering helicopter; from memory), and m of rotor where the subject is none. CP.
 */
export const rotorDiametersClear = 3;
export const usualRotor = 12;
/** m from a winch's cable where nobody stands. CP. */
export const winchClear = 50;
/** m from a way within which one stands beside it. */
export const besideWay = 10;
/** m from a centreline from which on a public footpath is open, though in the buffer. */
export const footpathClear = 30;
/** Cells that are looked at most: a minute or so. CP. */
export const mostCells = 1_000_000;
/** m between candidates, how many on one way, and in all. */
export const apart = 300;
export const mostOnOneWay = 3;
export const mostCandidates = 12;

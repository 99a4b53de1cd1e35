/**
 * A line of sight from an eye as numbers in an array, so that handing it on makes no garbage: its bearing (`turnOf`), east and north
 * in m to its end, its level distance in m, and its steepness (`HorizonRays`).
 */
export type Line = Float64Array;

export const lineTurn = 0;
export const lineEast = 1;
export const lineNorth = 2;
export const lineDistance = 3;
export const lineSteepness = 4;
export const newLine = (): Line => new Float64Array(5);

/** Movements that a list or a day of the log must hold at least before it says how many come in an hour. CP. */
export const fewestMovements = 3;
/** Hours that they are taken to spread over at least: three within ten minutes are no eighteen an hour. CP. */
export const shortestSpread = 1;
/** Observations of wind in a month from which on its shares are told, as in the sweep. CP. */
export const fewestObservations = 20;

/**
 * A bearing without trigonometry: grows clockwise from 0 at north over 1 at east to just under 4. Sorts directions and
 * tells them apart, which is all that bins of bearings need, at a fifth of the cost of an arc tangent.
 */
export function turnOf(east: number, north: number): number {
  const part = east / (Math.abs(east) + Math.abs(north));
  return north >= 0 ? (part >= 0 ? part : 4 + part) : 2 - part;
}

/** The level direction (not of unit length) of a turn: the inverse. */
export function directionOf(turn: number): readonly [east: number, north: number] {
  const east = turn <= 1 ? turn : turn <= 3 ? 2 - turn : turn - 4;
  const north = 1 - Math.abs(east);
  return [east, turn > 1 && turn < 3 ? -north : north];
}

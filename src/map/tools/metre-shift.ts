import { RAD } from '../../figures/geometry/angles';
import { frameAt, mapped } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';

/**
 * Moves positions `east` and `north` metres, keeping a shape's size: a degree of longitude is taken at each
 * position's own latitude. Good to a millimetre in 100 m, and exact enough for a drag of some kilometres.
 */
export function shiftedBy(east: number, north: number): (position: Position) => Position {
  return (position) => {
    const [lng, lat] = position;
    const { meridianRadius, normalRadius } = frameAt(position);
    return [lng + east / (normalRadius * Math.cos(lat * RAD) * RAD), lat + north / (meridianRadius * RAD)];
  };
}

/** The shift in metres that brings `from` to `to`. */
export function shiftBetween(from: Position, to: Position): (position: Position) => Position {
  const [east, north] = mapped(frameAt(from), to);
  return shiftedBy(east, north);
}

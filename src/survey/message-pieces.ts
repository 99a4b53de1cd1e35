/** Of one message between a worker and the page, so that the page takes it within a few milliseconds. */
const mostPositions = 20_000;
/** What a feature costs besides its positions, in positions. */
const perFeature = 20;

/** Things with coordinates in pieces, each of which one message carries. `coordinatesOf`: a position or nested lists of them. */
export function* messagePieces<T>(
  things: readonly T[],
  coordinatesOf: (thing: T) => unknown,
): Generator<readonly T[]> {
  let piece: T[] = [];
  let size = 0;
  for (const thing of things) {
    piece.push(thing);
    size += perFeature + positionsOf(coordinatesOf(thing));
    if (size < mostPositions) continue;
    yield piece;
    piece = [];
    size = 0;
  }
  if (piece.length > 0) yield piece;
}

function positionsOf(coordinates: unknown): number {
  if (!Array.isArray(coordinates)) return 0;
  const [first] = coordinates as unknown[];
  if (!Array.isArray(first)) return 1;
  return Array.isArray(first[0])
    ? (coordinates as unknown[]).reduce((sum: number, ring) => sum + positionsOf(ring), 0)
    : coordinates.length;
}

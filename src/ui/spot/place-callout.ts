export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Size {
  readonly width: number;
  readonly height: number;
}

const held = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value));

/**
 * Where the upper left corner of a callout goes so that it leaves a disc of `clear` px round its spot free and
 * stays inside the map: to the right, else to the left, else above, else below. Null when the spot is outside
 * the map, or nothing of the four has room.
 */
export function placeCallout(spot: Point, callout: Size, map: Size, clear: number, edge = 8): Point | null {
  if (spot.x < 0 || spot.y < 0 || spot.x > map.width || spot.y > map.height) return null;
  const most = { x: map.width - callout.width - edge, y: map.height - callout.height - edge };
  if (most.x < edge || most.y < edge) return null;
  const beside = held(spot.y - callout.height / 2, edge, most.y);
  const over = held(spot.x - callout.width / 2, edge, most.x);
  const places: readonly Point[] = [
    { x: spot.x + clear, y: beside },
    { x: spot.x - clear - callout.width, y: beside },
    { x: over, y: spot.y - clear - callout.height },
    { x: over, y: spot.y + clear },
  ];
  return places.find(({ x, y }) => x >= edge && x <= most.x && y >= edge && y <= most.y) ?? null;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Free px round the spot: for its symbol and name, and where it looks for its light rings. */
const clear = { quiet: 56, looking: 88 } as const;
/** px at the upper right corner where the buttons of the map stand, with the edge round them. */
const buttons = { width: 72, height: 208 } as const;
/** Free px at the edge of the map. */
const edge = 8;
/** Degrees to each side of a direction that belong to it. */
const reach = 60;

const held = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value));

/** How many of the bearings look in a direction, in degrees. */
const looking = (bearings: readonly number[], direction: number): number =>
  bearings.filter((b) => Math.abs(((b - direction + 540) % 360) - 180) < reach).length;

/**
 * Where the upper left corner of a callout goes: beside, above or below its spot, inside the map (north up), and
 * rather where the spot does not look, so that the paths it is about stay in sight. `bearings`: degrees from true
 * north, what the spot looks at. Null when the spot is outside the map, or the callout has no room anywhere.
 */
export function placeCallout(
  spot: Point,
  callout: Size,
  map: Size,
  bearings: readonly number[],
): Point | null {
  if (spot.x < 0 || spot.y < 0 || spot.x > map.width || spot.y > map.height) return null;
  const most = { x: map.width - callout.width - edge, y: map.height - callout.height - edge };
  if (most.x < edge || most.y < edge) return null;
  const beside = held(spot.y - callout.height / 2, edge, most.y);
  // Level with the buttons it goes below them, as long as it still stands beside its spot.
  const belowButtons = held(buttons.height, edge, most.y);
  const right = (gap: number) => {
    const x = spot.x + gap;
    const covers = x + callout.width > map.width - buttons.width && beside < buttons.height;
    return { x, y: covers ? belowButtons : beside };
  };
  const over = held(spot.x - callout.width / 2, edge, most.x);
  const places: readonly { direction: number; at: (gap: number) => Point }[] = [
    { direction: 90, at: right },
    { direction: 270, at: (gap) => ({ x: spot.x - gap - callout.width, y: beside }) },
    { direction: 180, at: (gap) => ({ x: over, y: spot.y + gap }) },
    { direction: 0, at: (gap) => ({ x: over, y: spot.y - gap - callout.height }) },
  ];
  const fitting = places
    .map(({ direction, at }) => ({ at, looks: looking(bearings, direction) }))
    .sort((one, other) => one.looks - other.looks)
    .map(({ at, looks }) => at(looks > 0 ? clear.looking : clear.quiet))
    .filter(({ x, y }) => x >= edge && x <= most.x && y >= edge && y <= most.y);
  const offButtons = ({ x, y }: Point) =>
    x + callout.width <= map.width - buttons.width || y >= buttons.height;
  return fitting.find(offButtons) ?? fitting[0] ?? null;
}

import { angleBetween } from '../../survey/angles';
import type { Box } from '../box-of';

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
/** Free px at the edge of the map. */
const edge = 8;
/** Share of a map's height that a callout at rest may take. */
const mostOfMap = 0.4;
/** Degrees to each side of a direction that belong to it. */
const reach = 60;

const held = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value));

/** How many of the bearings look in a direction, in degrees. */
const looking = (bearings: readonly number[], direction: number): number =>
  bearings.filter((b) => angleBetween(b, direction) < reach).length;

/** Sides and corners of a spot, the sides first: there a callout stands nearest. */
const directions = [90, 270, 180, 0, 135, 225, 45, 315];

/** The mark of a spot on the map. */
const markOf = ({ x, y }: Point): Box => ({ x: x - 12, y: y - 12, width: 24, height: 24 });

/** px of two boxes that lie over one another. */
const shared = (one: Box, other: Box): number =>
  Math.max(0, Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x)) *
  Math.max(0, Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y));

/**
 * Where the upper left corner of a callout goes: beside its spot or off one of its corners, inside the map (north up),
 * over none of what is in the `way` (the legend, the map's buttons, its scale and credit) and never over the spot itself; rather where the spot does
 * not look, so that the paths it is about stay in sight, there over the fewest `others` (spots), and the nearest place. Things in the way that leave no
 * other place are covered as little as can be. `bearings`: degrees from true north, what the spot looks at. Null when the
 * spot is outside the map, or the callout has no room anywhere: at rest (not `mayCover`) none on a low map.
 */
export function placeCallout(
  spot: Point,
  callout: Size,
  map: Size,
  bearings: readonly number[],
  way: readonly Box[],
  others: readonly Point[] = [],
  mayCover = true,
): Point | null {
  if (spot.x < 0 || spot.y < 0 || spot.x > map.width || spot.y > map.height) return null;
  // On so low a map it would lie over all that there is to see; the card beside it says the same.
  if (!mayCover && callout.height > map.height * mostOfMap) return null;
  const most = { x: map.width - callout.width - edge, y: map.height - callout.height - edge };
  if (most.x < edge || most.y < edge) return null;
  const places = directions.flatMap((direction) => {
    const looks = looking(bearings, direction);
    const gap = looks > 0 ? clear.looking : clear.quiet;
    return towards(spot, callout, direction, gap, most, way).map((corner) => {
      const box = { ...corner, ...callout };
      const end = leaderTo(spot, box);
      return {
        ...corner,
        looks,
        isLooking: looks > 0 ? 1 : 0,
        hides: others.filter((other) => shared(box, markOf(other)) > 0).length,
        covers: way.reduce((sum, other) => sum + shared(box, other), 0),
        away: Math.round(Math.hypot(end.x - spot.x, end.y - spot.y)),
      };
    });
  });
  const [best] = places
    .filter(({ x, y }) => x >= edge && x <= most.x && y >= edge && y <= most.y)
    .sort(
      (a, b) =>
        a.covers - b.covers ||
        a.isLooking - b.isLooking ||
        a.hides - b.hides ||
        a.looks - b.looks ||
        a.away - b.away,
    );
  return best && (mayCover || best.covers === 0) ? { x: best.x, y: best.y } : null;
}

/** Places in one direction: level with the spot or slid along that side past what is in the way, or off its corner there. */
function towards(
  { x, y }: Point,
  { width, height }: Size,
  direction: number,
  gap: number,
  most: Point,
  way: readonly Box[],
): Point[] {
  const beyond = (along: number, size: number, sign: number, by: number) =>
    sign > 0 ? along + by : along - by - size;
  if (direction % 90 !== 0) {
    // To the whole pixel above: a corner is never as near as a side.
    const by = Math.ceil(gap * Math.SQRT1_2);
    const [east, south] = [direction < 180 ? 1 : -1, direction > 90 && direction < 270 ? 1 : -1];
    return [{ x: beyond(x, width, east, by), y: beyond(y, height, south, by) }];
  }
  const slid = (middle: number, size: number, to: number, past: readonly (readonly [number, number])[]) =>
    [middle - size / 2, ...past.flatMap(([from, end]) => [end, from - size])].map((at) => held(at, edge, to));
  if (direction % 180 === 90) {
    const across = beyond(x, width, direction === 90 ? 1 : -1, gap);
    const past = way.map((box) => [box.y, box.y + box.height] as const);
    return slid(y, height, most.y, past).map((at) => ({ x: across, y: at }));
  }
  const across = beyond(y, height, direction === 180 ? 1 : -1, gap);
  const past = way.map((box) => [box.x, box.x + box.width] as const);
  return slid(x, width, most.x, past).map((at) => ({ x: at, y: across }));
}

/** From the spot to the nearest place of its callout's edge. */
export const leaderTo = (spot: Point, { x, y, width, height }: Box): Point => ({
  x: held(spot.x, x, x + width),
  y: held(spot.y, y, y + height),
});

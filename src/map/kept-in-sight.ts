import type { Pixel } from './map-surface';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** px that a spot wants about it, for its rings and name; less of a small map. */
const about = 76;

/**
 * How far the map's ground must go, in px to the left and up, for a place to be well in sight after the map took another
 * size round its middle. `at`: where the place is now. Null where it is well in sight, and where it was not on the map before
 * either: who has looked elsewhere is left there.
 */
export function keptInSight(at: Pixel, before: Size, now: Size): { right: number; down: number } | null {
  const wasAt = { x: at.x + (before.width - now.width) / 2, y: at.y + (before.height - now.height) / 2 };
  if (wasAt.x < 0 || wasAt.y < 0 || wasAt.x > before.width || wasAt.y > before.height) return null;
  const right = over(at.x, now.width);
  const down = over(at.y, now.height);
  return right === 0 && down === 0 ? null : { right, down };
}

/** By how much a coordinate is outside what is well in sight; negative to the left and above. */
function over(at: number, size: number): number {
  const room = Math.min(about, size / 3);
  if (at < room) return at - room;
  return Math.max(0, at - (size - room));
}

import { DEG } from '../../survey/angles';
import type { Box } from '../box-of';

interface Pixel {
  readonly x: number;
  readonly y: number;
}

/**
 * Where on a map's edge, `inset` px within and beside what lies there, something points at a place off the map, and which
 * way: degrees clockwise from the right of the screen. px from the upper left corner. Null for a place on the map.
 */
export function edgePointer(
  place: Pixel,
  { width, height }: { readonly width: number; readonly height: number },
  inset: number,
  furniture: readonly Box[] = [],
): (Pixel & { readonly turn: number }) | null {
  if (place.x >= 0 && place.y >= 0 && place.x <= width && place.y <= height) return null;
  const middle = { x: width / 2, y: height / 2 };
  const right = place.x - middle.x;
  const down = place.y - middle.y;
  // As far from the middle towards the place as the nearer of the two edges allows.
  const share = Math.min(
    right === 0 ? Infinity : Math.max(0, middle.x - inset) / Math.abs(right),
    down === 0 ? Infinity : Math.max(0, middle.y - inset) / Math.abs(down),
  );
  const at = { x: middle.x + right * share, y: middle.y + down * share };
  for (const box of furniture) {
    const over =
      Math.abs(at.x - box.x - box.width / 2) < box.width / 2 + inset &&
      Math.abs(at.y - box.y - box.height / 2) < box.height / 2 + inset;
    if (!over) continue;
    if (box.height > box.width) at.x = box.x > middle.x ? box.x - inset : box.x + box.width + inset;
    else at.y = box.y > middle.y ? box.y - inset : box.y + box.height + inset;
  }
  return { ...at, turn: Math.atan2(down, right) * DEG };
}

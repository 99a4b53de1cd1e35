/** A rectangle on paper: its upper left corner, width and height. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A name to be put beside a point; `gap` is how far the mark reaches from it. */
export interface Named {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly gap: number;
}

/** Mean width of a letter of the sheet's type, as a share of its size. */
const letter = 0.54;

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/**
 * Puts names beside their points, the first before the others: to the right, left, above or below, where they touch
 * nothing that is there already and stay on the `sheet`. A name without room is left out, unless it is `needed`: those
 * lie to the right, or left of what is near the right edge.
 */
export function labelPlaces<N extends Named & { readonly needed: boolean }>(
  names: readonly N[],
  taken: readonly Box[],
  sheet: Box,
): (N & { readonly box: Box })[] {
  const there = [...taken];
  return names.flatMap((name) => {
    const { x, y, text, size, gap } = name;
    const [width, height] = [text.length * letter * size, size * 1.15];
    const around: readonly Box[] = [
      { x: x + gap, y: y - height / 2, width, height },
      { x: x - gap - width, y: y - height / 2, width, height },
      { x: x - width / 2, y: y - gap - height, width, height },
      { x: x - width / 2, y: y + gap, width, height },
      { x: x + gap * 0.7, y: y - gap - height * 0.8, width, height },
      { x: x + gap * 0.7, y: y + gap * 0.6, width, height },
      { x: x - gap * 0.7 - width, y: y - gap - height * 0.8, width, height },
      { x: x - gap * 0.7 - width, y: y + gap * 0.6, width, height },
    ];
    const inside = around.filter(
      (box) =>
        box.x >= sheet.x &&
        box.y >= sheet.y &&
        box.x + width <= sheet.x + sheet.width &&
        box.y + height <= sheet.y + sheet.height,
    );
    const free = inside.find((box) => !there.some((other) => overlap(box, other)));
    const box = free ?? (name.needed ? (inside[0] ?? around[1]) : undefined);
    if (!box) return [];
    there.push(box);
    return [{ ...name, box }];
  });
}

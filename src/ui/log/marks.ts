/** Pixels of a picture as it is shown: from the left, from the top. */
export type Point = readonly [x: number, y: number];

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where two marks begin: level, in the middle half of the picture. */
export const firstPoints = ({ width, height }: Size): readonly [Point, Point] => [
  [Math.round(width / 4), Math.round(height / 2)],
  [Math.round((width * 3) / 4), Math.round(height / 2)],
];

export const extentOf = ([[ax, ay], [bx, by]]: readonly [Point, Point]): number =>
  Math.hypot(ax - bx, ay - by);

const steps: ReadonlyMap<string, Point> = new Map([
  ['ArrowLeft', [-1, 0]],
  ['ArrowRight', [1, 0]],
  ['ArrowUp', [0, -1]],
  ['ArrowDown', [0, 1]],
]);

/** Where an arrow key takes a mark, `by` pixels away; null for any other key. */
export function nudged([x, y]: Point, key: string, by: number): Point | null {
  const step = steps.get(key);
  return step ? [x + step[0] * by, y + step[1] * by] : null;
}

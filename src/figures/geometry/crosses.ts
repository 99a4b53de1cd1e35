/** East and north in m. */
export type Point = readonly [x: number, y: number];

/** Whether two stretches cross. */
export function crosses(a: Point, b: Point, p: Point, q: Point): boolean {
  const side = (o: Point, d: Point, x: Point) =>
    (d[0] - o[0]) * (x[1] - o[1]) - (d[1] - o[1]) * (x[0] - o[0]);
  return side(a, b, p) * side(a, b, q) < 0 && side(p, q, a) * side(p, q, b) < 0;
}

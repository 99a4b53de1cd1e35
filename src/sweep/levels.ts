/** Every how many cells are looked at, from the first picture to the last. */
export const strides = [16, 8, 4, 2, 1] as const;

/** The cells of a level that no coarser level has: every `stride`th of rows and columns. */
export function cellsOfLevel(count: number, level: number): Int32Array {
  const stride = strides[level] ?? 1;
  const cells: number[] = [];
  for (let row = first(stride, count); row < count; row += stride)
    for (let column = first(stride, count); column < count; column += stride)
      if (!coarser(row, column, level, count)) cells.push(row * count + column);
  return Int32Array.from(cells);
}

/** The first row or column of a stride: half a stride in, so that a coarse cell stands for what is round it. */
const first = (stride: number, count: number): number => Math.min(count - 1, Math.floor(stride / 2));

function coarser(row: number, column: number, level: number, count: number): boolean {
  for (let l = 0; l < level; l++) {
    const stride = strides[l] ?? 1;
    const from = first(stride, count);
    if (row >= from && column >= from && (row - from) % stride === 0 && (column - from) % stride === 0)
      return true;
  }
  return false;
}

/** Every how many cells are looked at, from the first picture to the last. */
export const strides = [16, 8, 4, 2, 1] as const;

/** The cells of a level that no coarser level has: every `stride`th of rows and columns. */
export function cellsOfLevel(count: number, level: number): Int32Array {
  // The last level has nearly all cells of the area, and the page asks: one pass each, nothing made on the way.
  const known = new Uint8Array(count * count);
  for (let coarser = 0; coarser < level; coarser++) mark(known, count, coarser, null);
  const cells = new Int32Array(Math.ceil(count / (strides[level] ?? 1)) ** 2);
  return cells.slice(0, mark(known, count, level, cells));
}

/** Marks the cells of a level; those that were not marked before are listed in `into`: how many. */
function mark(known: Uint8Array, count: number, level: number, into: Int32Array | null): number {
  const stride = strides[level] ?? 1;
  // Half a stride in, so that a coarse cell stands for what is round it.
  const first = Math.min(count - 1, Math.floor(stride / 2));
  let found = 0;
  for (let row = first; row < count; row += stride)
    for (let column = first; column < count; column += stride) {
      const at = row * count + column;
      if (known[at] === 1) continue;
      known[at] = 1;
      if (into) into[found++] = at;
    }
  return found;
}

/** Heights on a square grid, and an eye over one of its cells. */
export interface Look {
  /** m above mean sea level, row by row; NaN where not known, which hides nothing and is not seen. */
  readonly heights: Float32Array;
  readonly columns: number;
  readonly rows: number;
  /** m to a side of a cell. */
  readonly cell: number;
  /** Of the cell under the eye. */
  readonly column: number;
  readonly row: number;
  /** m of the eye above the ground there, and of what is looked for above the ground of each cell. */
  readonly eye: number;
  readonly target: number;
  /** m that the earth falls away for each squared m of distance, less refraction: `sinkPerSquareMetre`. */
  readonly sink: number;
}

/** m above the eye of what hides nothing: where no height is known beside the eye. */
const nothing = -1e9;

/**
 * What of a grid is in sight from one eye, for every cell at once: 1 for seen. From ring to ring outwards each cell is held
 * against the height that is carried to it, which lies in the plane through the eye and the two cells of the ring inside
 * between which its sight line passes (Wang, Robinson and White 2000, reference planes; the same as Franklin and Ray's
 * XDraw of 1994, and what GDAL carries). Carried heights are smoothed from ring to ring, so at the edge of what is in sight
 * some cells differ from a look along each cell's own line, which `SightLines` takes (test R64 says how many): it is for
 * what only has to be about right for very many cells. `carried` is scratch space, one entry a cell.
 */
export function viewshed(look: Look, seen: Uint8Array, carried: Float64Array): void {
  const { heights, columns, rows, column, row, target } = look;
  const at = row * columns + column;
  const eye = (heights[at] as number) + look.eye;
  // Counted above the eye with the curvature taken off, sight lines are straight.
  const sinkOfCell = look.sink * look.cell * look.cell;
  seen.fill(0);
  seen[at] = 1;
  const rings = Math.max(column, columns - 1 - column, row, rows - 1 - row);
  for (let ring = 1; ring <= rings; ring++) {
    const perInner = ring > 1 ? 1 / (ring - 1) : 0;
    for (let side = 0; side < 4; side++) {
      const isRow = side < 2;
      const sign = side % 2 === 0 ? 1 : -1;
      const there = (isRow ? row : column) + sign * ring;
      if (there < 0 || there >= (isRow ? rows : columns)) continue;
      const middle = isRow ? column : row;
      const along = isRow ? 1 : columns;
      const outward = sign * (isRow ? columns : 1);
      // A corner belongs to the side of its row.
      const half = isRow ? ring : ring - 1;
      const from = Math.max(-half, -middle);
      const to = Math.min(half, (isRow ? columns : rows) - 1 - middle);
      for (let i = from; i <= to; i++) {
        const k = at + outward * ring + i * along;
        const height = (heights[k] as number) - eye - sinkOfCell * (ring * ring + i * i);
        let before = nothing;
        if (ring > 1) {
          const straight = k - outward;
          const aside = i < 0 ? -i : i;
          const inner = i === 0 ? straight : straight - (i < 0 ? -along : along);
          // At a corner the whole weight is the inner corner's: the cell straight inside is not of the ring inside.
          const outer = aside === ring ? inner : straight;
          before =
            ((carried[inner] as number) * aside + (carried[outer] as number) * (ring - aside)) * perInner;
        }
        if (height + target >= before) seen[k] = 1;
        carried[k] = height > before ? height : before;
      }
    }
  }
}

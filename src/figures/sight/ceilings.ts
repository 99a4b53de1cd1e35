/** Squares of one level: 2, 4, 8 ... samples to a side. */
interface Level {
  readonly columns: number;
  readonly rows: number;
  readonly highest: Float32Array;
}

/** The highest of a grid of heights in squares of 2, 4, 8 ... samples, so that no stretch of ground is looked at sample by sample. */
export class Ceilings {
  readonly #levels: readonly Level[];

  constructor(columns: number, rows: number, heights: Float32Array) {
    const levels: Level[] = [{ columns, rows, highest: heights }];
    for (let last = levels[0] as Level; last.columns > 1 || last.rows > 1; last = levels.at(-1) as Level)
      levels.push(halved(last));
    this.#levels = levels;
  }

  /** m that no sample is above between two places, in columns and rows; -Infinity where nothing is known. */
  between(x0: number, y0: number, x1: number, y1: number): number {
    // A height between samples hangs on those round it.
    const [west, east] = x0 < x1 ? [x0 - 1, x1 + 1] : [x1 - 1, x0 + 1];
    const [north, south] = y0 < y1 ? [y0 - 1, y1 + 1] : [y1 - 1, y0 + 1];
    const span = Math.max(east - west, south - north);
    const at = Math.min(this.#levels.length - 1, 32 - Math.clz32(span | 0));
    const { columns, rows, highest } = this.#levels[at] as Level;
    const size = 1 << at;
    const c0 = Math.max(0, Math.floor(west / size));
    const c1 = Math.min(columns - 1, Math.floor(east / size));
    const r0 = Math.max(0, Math.floor(north / size));
    const r1 = Math.min(rows - 1, Math.floor(south / size));
    let most = -Infinity;
    for (let r = r0; r <= r1; r++)
      for (let c = c0; c <= c1; c++) {
        const height = highest[r * columns + c] as number;
        if (height > most) most = height;
      }
    return most;
  }
}

function halved({ columns, rows, highest }: Level): Level {
  const [halfColumns, halfRows] = [Math.ceil(columns / 2), Math.ceil(rows / 2)];
  const half = new Float32Array(halfColumns * halfRows).fill(-Infinity);
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < columns; c++) {
      const height = highest[r * columns + c] as number;
      const at = (r >> 1) * halfColumns + (c >> 1);
      // An unknown height (NaN) is above nothing.
      if (height > (half[at] as number)) half[at] = height;
    }
  return { columns: halfColumns, rows: halfRows, highest: half };
}

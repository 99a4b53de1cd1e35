/**
 * The pieces of all paths, those first that promise most. From place to place little changes, so the order of the place before
 * is put right by insertion.
 */
export class PieceQueue {
  readonly count: number;
  readonly path: Int16Array;
  readonly piece: Int32Array;
  /** What the total of none of its samples exceeds. */
  readonly most: Float64Array;

  /** `counts`: pieces of each path. */
  constructor(counts: readonly number[]) {
    this.path = Int16Array.from(counts.flatMap((count, p) => new Array<number>(count).fill(p)));
    this.piece = Int32Array.from(counts.flatMap((count) => Array.from({ length: count }, (_, b) => b)));
    this.count = this.path.length;
    this.most = new Float64Array(this.count);
  }

  /** Puts them in order by `most`. */
  sort(): void {
    const { count, path, piece, most } = this;
    for (let q = 1; q < count; q++) {
      const value = most[q] as number;
      let at = q;
      while (at > 0 && (most[at - 1] as number) < value) at--;
      if (at === q) continue;
      const [p, b] = [path[q] as number, piece[q] as number];
      path.copyWithin(at + 1, at, q);
      piece.copyWithin(at + 1, at, q);
      most.copyWithin(at + 1, at, q);
      path[at] = p;
      piece[at] = b;
      most[at] = value;
    }
  }
}

/** What the drawn picture holds, in px from its upper left corner: for tests, and for saying what is to be seen. */
export interface Measured {
  /** Where the aircraft would be with nothing in front of it; null outside the frame. */
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  } | null;
  /** px of the aircraft, and those of them that nothing hides. */
  readonly all: number;
  readonly visible: number;
  /** Mean brightness of what is to be seen of it, linear, 0 to 255; null when it was not asked for. */
  readonly brightness: number | null;
}

/** Counts what masks of the aircraft and the shown picture hold: RGBA, rows from the bottom; `shown` null where brightness is not asked for. */
export function measured(
  all: Uint8Array,
  visible: Uint8Array,
  shown: Uint8Array | null,
  width: number,
  height: number,
): Measured {
  let [left, right, top, bottom] = [width, -1, height, -1];
  let [count, seen, sum] = [0, 0, 0];
  for (let i = 0; i < width * height; i++) {
    if (visible[4 * i] !== 0) {
      seen++;
      if (shown) sum += ((shown[4 * i] ?? 0) + (shown[4 * i + 1] ?? 0) + (shown[4 * i + 2] ?? 0)) / 3;
    }
    if (all[4 * i] === 0) continue;
    count++;
    const [x, y] = [i % width, height - 1 - Math.floor(i / width)];
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  return {
    box: count === 0 ? null : { left, right: right + 1, top, bottom: bottom + 1 },
    all: count,
    visible: seen,
    brightness: shown && seen > 0 ? sum / seen : null,
  };
}

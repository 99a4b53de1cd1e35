/** Sixty-four signs that JSON leaves as they are, each a byte. */
const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const base = signs.length;
/** Five digits hold what any column holds (half a thousand million) and stay exact. */
const mostPlanes = 5;

/**
 * Whole numbers as digits to the base of 64, a text a digit, lowest first: the low digits of places and heights are
 * as good as random, and apart from the high ones they cost their six bits and no more. Signs go into the lowest bit.
 */
export function toDigits(values: readonly number[]): string[] {
  const planes: string[] = [];
  let rest = values.map((value) => (value < 0 ? -2 * value - 1 : 2 * value));
  while (rest.some((value) => value > 0)) {
    planes.push(rest.map((value) => signs[value % base]).join(''));
    rest = rest.map((value) => Math.floor(value / base));
  }
  return planes;
}

const valueOf = new Int8Array(128).fill(-1);
[...signs].forEach((sign, value) => (valueOf[sign.charCodeAt(0)] = value));

/** The numbers again, `count` of them; null where the texts are not what `toDigits` gives. */
export function fromDigits(planes: readonly string[], count: number): number[] | null {
  if (planes.length > mostPlanes || planes.some((plane) => plane.length !== count)) return null;
  const out = new Array<number>(count).fill(0);
  for (const plane of planes.toReversed())
    for (let i = 0; i < count; i++) {
      const digit = valueOf[plane.charCodeAt(i)] ?? -1;
      if (digit < 0) return null;
      out[i] = (out[i] ?? 0) * base + digit;
    }
  return out.map((value) => (value % 2 === 1 ? -(value + 1) / 2 : value / 2));
}

/** Sixty-four signs that JSON leaves as they are, each a byte. */
const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const base = signs.length;
/** Eight digits hold what any column holds (the whole curve of `along-curve.ts`) and stay exact. */
const mostPlanes = 8;

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
export function fromDigits(planes: readonly string[], count: number): Float64Array | null {
  if (planes.length > mostPlanes || planes.some((plane) => plane.length !== count)) return null;
  const out = new Float64Array(count);
  for (const plane of planes.toReversed())
    for (let i = 0; i < count; i++) {
      const digit = valueOf[plane.charCodeAt(i)] ?? -1;
      if (digit < 0) return null;
      out[i] = (out[i] as number) * base + digit;
    }
  for (let i = 0; i < count; i++) {
    const value = out[i] as number;
    out[i] = value % 2 === 1 ? -(value + 1) / 2 : value / 2;
  }
  return out;
}

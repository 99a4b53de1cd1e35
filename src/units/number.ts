/**
 * A number as people type it: "1240", "1 240", "1,240" (a comma before exactly three digits parts thousands, as we
 * print them), "15,24" (any other comma is a decimal one), with any of the usual minus signs. Null for all else.
 */
export function parseNumber(text: string): number | null {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/(\d)[ \u00a0\u2009\u202f](?=\d{3}(?!\d))/g, '$1')
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1')
    .replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A number as it stands in an input field, ready to be changed: at most `decimals` decimals, no thousands parted. */
export const typedNumber = (value: number, decimals: number): string =>
  String(Number(value.toFixed(decimals)) + 0);

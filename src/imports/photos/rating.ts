/** A rating from 0 to 5 (xmp:Rating, ISO 16684-1); -1 means rejected and counts as 0. Null for anything else. */
export function readRating(value: unknown): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : value;
  if (typeof number !== 'number' || !Number.isFinite(number) || number < -1 || number > 5) return null;
  return Math.max(0, Math.round(number));
}

/** The rating in an XMP file beside a photograph, written as attribute or as element; null where it has none. */
export function sidecarRating(xmp: string): number | null {
  const [, attribute, element] =
    /\bxmp:Rating\s*(?:=\s*["']\s*(-?[\d.]{1,8})\s*["']|>\s*(-?[\d.]{1,8})\s*<)/.exec(xmp) ?? [];
  return readRating(attribute ?? element);
}

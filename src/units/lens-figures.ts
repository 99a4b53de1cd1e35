import { parseNumber } from './number';

/** Lowest and highest of one number or two with a dash or slash between them; null for anything else. */
function pair(text: string): readonly [low: number, high: number] | null {
  const parts = text.split(/\s*(?:-|–|—|\/|to)\s*/i).map((part) => parseNumber(part));
  const [low = null, high = low] = parts;
  if (parts.length > 2 || low === null || high === null || low <= 0 || high <= 0) return null;
  return low <= high ? [low, high] : [high, low];
}

/** A lens's focal lengths in mm as engraved: "500", "100-400", "150–600 mm"; null for what is none. */
export function parseFocalLengths(
  text: string,
): { readonly shortest: number; readonly longest: number } | null {
  const read = pair(text.trim().replace(/\s*mm$/i, ''));
  return read && { shortest: read[0], longest: read[1] };
}

/** A lens's widest aperture as engraved: "4", "f/2.8", "4.5-5.6", "f/5–6.3"; `long` null where one number holds throughout. */
export function parseApertures(
  text: string,
): { readonly widest: number; readonly long: number | null } | null {
  const read = pair(text.trim().replace(/^(?:f|1)\s*[/:]\s*/i, ''));
  return read && { widest: read[0], long: read[1] === read[0] ? null : read[1] };
}

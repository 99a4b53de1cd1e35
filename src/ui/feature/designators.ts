import type { EndIndex, Runway } from '../../survey/schema/runway';

/**
 * The designator to offer for an end, or null when its number already is the suggested one, and for names without
 * a number ("N", "H1"). The letter of parallel runways stays: "08L" with 09 suggested gives "09L".
 */
export function betterDesignator(designator: string, suggested: string): string | null {
  const found = /^(\d{0,2})([LCR]?)$/.exec(designator.trim().toUpperCase());
  if (!found) return null;
  const [, digits = '', letter = ''] = found;
  return Number(digits) === Number(suggested) ? null : suggested + letter;
}

/** A runway named after its two designators is renamed with them; null where the user gave another name. */
export function nameAfterEnds({ name, ends }: Runway, index: EndIndex, designator: string): string | null {
  const before = ends.map((end) => end.designator);
  if (name === '' || name !== before.join('/')) return null;
  return before.with(index, designator).join('/');
}

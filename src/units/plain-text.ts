/** Marks that turn the direction of writing, and isolates (Unicode Standard Annex 9). */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/**
 * A text from a file without the marks that turn the direction of writing: in a sentence of the program's they would
 * turn its own words. Letters keep their own direction.
 */
export const withoutTurning = (text: string): string => text.replace(turning, '');

/** Hebrew, Arabic and the other scripts that run from right to left (blocks of the Unicode Standard). */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** A name that stands among the program's own words, isolated (U+2068, U+2069) where it would turn them. */
export const amongWords = (name: string): string => (rightToLeft.test(name) ? `\u2068${name}\u2069` : name);

/** In one line, and cut after `most` characters where it is longer. */
export function shortened(text: string, most: number): string {
  // Twice as many units are enough for pairs; the rest may be megabytes.
  const plain = withoutTurning(text.slice(0, 4 * most))
    .replace(/\s+/g, ' ')
    .trim();
  const letters = [...plain];
  return letters.length > most || text.length > 4 * most ? `${letters.slice(0, most - 1).join('')}…` : plain;
}

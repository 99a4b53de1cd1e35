import { findTypes, typeNamed } from './find-types';

/**
 * What somebody who types these words for an aircraft means: the designator of the one type that they name ("Dash 8
 * Q400"), or the words themselves where they name several ("737"), still to be chosen from; null where nobody here knows
 * them. A word of fewer than three letters and digits names nothing.
 */
export function typeHeard(words: string): string | null {
  if (words.replace(/[^\p{L}\p{N}]/gu, '').length < 3) return null;
  const one = typeNamed(words);
  if (one) return one.designator;
  const [first] = findTypes(words, 1);
  const named = first?.names.some((name) => ` ${plain(name)} `.includes(` ${plain(words)} `));
  return named ? words.toUpperCase() : null;
}

const plain = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]+/g, ' ');

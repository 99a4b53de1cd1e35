import type { SurveyToKeep } from './records';

/**
 * What a page writes when it goes. IndexedDB answers later, and a page that is gone hears no answer: what was typed
 * just before a reload was never written (measured in Chromium: 0 of 12). `localStorage` writes at once, so
 * the last change lies there until the next page puts it where it belongs.
 */
export interface LastWords {
  readonly survey: SurveyToKeep;
  /** The revision that the page knew. */
  readonly known: number;
}

const prefix = 'sunside-last-words-';
/** One page shows one survey, so it needs one place. */
const ownKey = prefix + crypto.getRandomValues(new Uint32Array(2)).join('-');

export function leaveLastWords(words: LastWords): void {
  try {
    localStorage.setItem(ownKey, JSON.stringify(words));
  } catch {
    // Larger than this storage takes, or refused: IndexedDB may still be quick enough.
  }
}

/** What this page has left is kept properly by now. */
export function forgetLastWords(key = ownKey): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // Refused: nothing is there either.
  }
}

/** What pages have left, each under its key. */
export function allLastWords(): readonly { readonly key: string; readonly words: LastWords }[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix) && key !== ownKey)
      .flatMap((key) => {
        const words = wordsOf(localStorage.getItem(key));
        return words ? [{ key, words }] : [];
      });
  } catch {
    return [];
  }
}

function wordsOf(text: string | null): LastWords | null {
  try {
    const value = JSON.parse(text ?? '') as Partial<LastWords> | null;
    const { survey, known } = value ?? {};
    const whole =
      typeof survey?.id === 'string' && typeof survey.text === 'string' && typeof known === 'number';
    return whole ? { survey, known } : null;
  } catch {
    return null;
  }
}

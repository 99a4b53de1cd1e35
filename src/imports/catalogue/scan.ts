import type { MatchTier, SearchText } from './types';

export interface Hit {
  readonly line: number;
  readonly tier: MatchTier;
}

/** Lines with a code that begins with `typed`, in catalogue order, up to `limit` of them. */
export function scanPrefix(
  { text, starts }: SearchText,
  typed: string,
  limit: number,
  keep: (hit: Hit) => void,
) {
  const wanted = `# ${typed}`;
  let place = text.indexOf(wanted);
  for (let count = 0; place >= 0 && count < limit; count++) {
    const line = lineAt(starts, place);
    keep({ line, tier: 'code-prefix' });
    place = text.indexOf(wanted, starts[line + 1] ?? text.length);
  }
}

/**
 * Lines that have all typed words, each with the best tier it earns, in catalogue order for each way of fitting.
 * Ways that fit worse are tried only while fewer than `limit` lines were found: a common syllable stands in
 * thousands of names.
 */
export function scanAll(
  searchText: SearchText,
  typed: string,
  limit: number,
  keep: (hit: Hit) => void,
): void {
  let count = 0;
  const counted = (hit: Hit) => {
    count++;
    keep(hit);
  };
  if (typed.length < insideFrom) scanPhrase(searchText, typed, true, counted);
  if (count < limit) scanPhrase(searchText, typed, false, counted);
  if (count < limit && typed.includes(' ')) scanWords(searchText, typed.split(' '), keep);
}

/** So many letters are looked for inside of words too. */
const insideFrom = 3;

const order: readonly MatchTier[] = ['code', 'code-prefix', 'name-prefix', 'word-prefix', 'inside'];

/** How well the text at `place` fits: 0 to 4, the place in `order`. The marks are those of `searchTextOf`. */
function tierAt(text: string, place: number, length: number): number {
  if (text[place - 1] !== ' ') return 4;
  const mark = text[place - 2];
  if (mark === '^') return 2;
  if (mark !== '#') return 3;
  const after = text[place + length];
  return after === '#' || after === '^' ? 0 : 1;
}

/**
 * One pass for all tiers: looking for each mark in turn would read two megabytes five times a keystroke. Even for
 * starts of words the bare letters are sought: marks stand everywhere, and stopping at each takes twice as long.
 */
function scanPhrase(
  { text, starts }: SearchText,
  typed: string,
  startsOnly: boolean,
  keep: (hit: Hit) => void,
): void {
  let line = -1;
  let lineEnd = 0;
  let best = order.length;
  const close = () => {
    const tier = order[best];
    if (tier !== undefined) keep({ line, tier });
    best = order.length;
  };
  for (let place = text.indexOf(typed); place >= 0; place = text.indexOf(typed, place + 1)) {
    if (startsOnly && text[place - 1] !== ' ') continue;
    if (place >= lineEnd) {
      close();
      line = lineAt(starts, place);
      lineEnd = starts[line + 1] ?? text.length;
    }
    best = Math.min(best, tierAt(text, place, typed.length));
  }
  close();
}

/** Lines that hold every word somewhere; tier `words` when each begins a word there. */
function scanWords({ text, starts }: SearchText, words: readonly string[], keep: (hit: Hit) => void): void {
  const forms = words.map((w) => (w.length < insideFrom ? [` ${w}`, `_${w}`] : [w]).map(newForm));
  let from = 0;
  for (;;) {
    // Each word leaps to its next place; the farthest one names the only line that can still fit.
    const places = forms.map((list) => Math.min(...list.map((form) => nextPlace(text, form, from))));
    const farthest = Math.max(...places);
    if (farthest === Infinity) return;
    const line = lineAt(starts, farthest);
    const begin = starts[line] ?? 0;
    const end = starts[line + 1] ?? text.length;
    if (places.every((place) => place >= begin)) {
      keep({ line, tier: allBegin(text.slice(begin, end), words) ? 'words' : 'inside' });
      from = end;
    } else {
      from = begin;
    }
  }
}

interface Form {
  readonly text: string;
  place: number;
}
const newForm = (text: string): Form => ({ text, place: -1 });

/** Next place of a form from `from` on, Infinity when there is none; a place that is still ahead is kept, since a rare form is far to seek. */
function nextPlace(text: string, form: Form, from: number): number {
  if (form.place < from) {
    const place = text.indexOf(form.text, from);
    form.place = place < 0 ? Infinity : place;
  }
  return form.place;
}

/** Two letters may also name the country or the state: "springfield il". */
const allBegin = (line: string, words: readonly string[]) =>
  words.every((word) => line.includes(` ${word}`) || (word.length === 2 && line.includes(`_${word}`)));

/** The line in which a place lies: the last one that begins at or before it. */
export function lineAt(starts: Uint32Array, place: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}

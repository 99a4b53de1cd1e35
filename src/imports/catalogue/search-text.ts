import { iataAt, localCodesAt } from './airfield-at';
import type { Columns } from './airfield-columns';
import { foldForSearch } from './fold';
import type { SearchText } from './types';
import { turned } from './usual-case';

/**
 * One line an airfield, all of it ASCII:
 * `# egll# lhr^ london heathrow airport, london_gb_eng`
 * Each code follows "# ", the name "^ ", the town ", ", and the parts of the region "_". So one plain text search
 * with the right mark in front tells a code from a name, and the start of a word (a space) from its inside.
 */
export function searchTextOf(columns: Columns): SearchText {
  const regions = columns.regionWords.map((region) => '_' + folded(region).replaceAll(' ', '_'));
  const starts = new Uint32Array(columns.names.length);
  const lines = new Array<string>(starts.length);
  let length = 0;
  for (let i = 0; i < starts.length; i++) {
    const codes = codePart(columns.icao[i] ?? '') + codePart(iataAt(columns, i));
    const local = columns.local[i] === '' ? '' : localCodesAt(columns, i).map(codePart).join('');
    const region = regions[columns.regions[i] ?? 0] ?? '';
    const line = `${codes}${local}^ ${folded(columns.names[i] ?? '')}, ${folded(columns.towns[i] ?? '')}${region}\n`;
    lines[i] = line;
    starts[i] = length;
    length += line.length;
  }
  return { text: lines.join(''), starts, sizes: Uint8Array.from(columns.kinds) };
}

const codePart = (code: string) => (code === '' ? '' : `# ${folded(code)}`);

/** Whatever a fold changes in small letters: most lines have none of it, and looking takes a fifth of the time of folding. */
const unfolded = /[^a-z0-9 ]|^ | $| {2}/;

/** Small letters are all that a search looks at: what marks large ones goes. */
function folded(line: string): string {
  const small = line.toLowerCase();
  return unfolded.test(small) ? foldForSearch(small.replaceAll(turned, '')).trim() : small;
}

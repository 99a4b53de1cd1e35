import { localCodesAt } from './airfield-at';
import type { Columns } from './consistent';
import { foldForSearch } from './fold';
import type { SearchText } from './types';

/**
 * One line an airfield, all of it ASCII:
 * `# egll# lhr^ london heathrow airport, london_gb_eng`
 * Each code follows "# ", the name "^ ", the town ", ", and the parts of the region "_". So one plain text search
 * with the right mark in front tells a code from a name, and the start of a word (a space) from its inside.
 */
export function searchTextOf(columns: Columns): SearchText {
  const names = foldForSearch(columns.names.join('\n')).split('\n');
  const towns = foldForSearch(columns.file.airfields.towns).split('\n');
  const regions = columns.file.airfields.regions.map(
    (region) => '_' + foldForSearch(region).trim().replaceAll(' ', '_'),
  );
  const starts = new Uint32Array(columns.names.length);
  const lines: string[] = [];
  let length = 0;
  for (const [i, name] of names.entries()) {
    if (i >= starts.length) break;
    let line = codePart(columns.icao[i] ?? '') + codePart(columns.iata[i] ?? '');
    if (columns.local[i] !== '') for (const code of localCodesAt(columns, i)) line += codePart(code);
    line += `^ ${name.trim()}, ${(towns[i] ?? '').trim()}${regions[columns.regions[i] ?? 0] ?? ''}\n`;
    starts[i] = length;
    length += line.length;
    lines.push(line);
  }
  return { text: lines.join(''), starts, sizes: Uint8Array.from(columns.kinds) };
}

function codePart(code: string): string {
  if (code === '') return '';
  return `# ${/^[A-Z0-9]+$/.test(code) ? code.toLowerCase() : foldForSearch(code).trim()}`;
}

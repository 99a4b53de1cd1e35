import { foldForSearch } from './fold';
import { scanAll, scanPrefix, type Hit } from './scan';
import type { Catalogue, Match, MatchTier } from './types';

/** Lower is better. A large airport whose town fits goes before an airstrip whose name begins so. */
const tierRank: Readonly<Record<MatchTier, number>> = {
  code: 0,
  'code-prefix': 1,
  'name-prefix': 2,
  'word-prefix': 3,
  words: 4,
  inside: 9,
};
/** By place in `airfieldKinds`. An exact code is not moved by size. */
const sizeRank = [0, 1, 3, 4, 4];

const rankOf = (tier: MatchTier, size: number) =>
  tierRank[tier] + (tier === 'code' ? 0 : (sizeRank[size] ?? 4));

/**
 * What fits the typed text, best first: an exact code, the start of a code, of a name, of any word, all typed
 * words in any order ("new york kennedy", "springfield il"), then anywhere inside; larger airfields first.
 * Accents, case and punctuation do not matter.
 */
export function searchCatalogue(catalogue: Catalogue, text: string, limit: number): Match[] {
  const typed = foldForSearch(text.replaceAll('\n', ' ')).trim();
  if (typed === '' || limit < 1) return [];
  const { searchText } = catalogue;
  const byRank: Hit[][] = [];
  const keep = (hit: Hit) => {
    const rank = rankOf(hit.tier, searchText.sizes[hit.line] ?? sizeRank.length);
    const list = (byRank[rank] ??= []);
    if (list.length < limit) list.push(hit);
  };
  // One letter stands in nearly every line; the codes that begin with it are more than enough.
  if (typed.length === 1) scanPrefix(searchText, typed, limit, keep);
  else scanAll(searchText, typed, limit, keep);
  const found = new Map<number, MatchTier>();
  for (const { line, tier } of byRank.filter(Boolean).flat()) {
    if (found.size >= limit) break;
    if (!found.has(line)) found.set(line, tier);
  }
  return Array.from(found, ([index, by]) => ({ airfield: catalogue.airfieldAt(index), by }));
}

import type { Credit, CreditPart } from '../../state/base-maps/ground';

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  copy: '©',
};

/**
 * A credit as map data carry it, which is a piece of HTML, as plain text with links: it comes from elsewhere, so it
 * is never put on the page as HTML. Links other than https are dropped, their text stays.
 */
export function creditText(html: string): Credit {
  const parts: CreditPart[] = [];
  const anchor = /<a\b[^>]*?\bhref\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s>]+))[^>]*>(.*?)<\/a\s*>/gis;
  let from = 0;
  const plain = (piece: string, href: string | null) => {
    const text = decoded(piece.replace(/<[^>]*>/g, ' '))
      .replace(/\s+/g, ' ')
      .trim();
    if (/[\p{L}\p{N}]/u.test(text)) parts.push({ text, href });
  };
  for (const match of html.matchAll(anchor)) {
    plain(html.slice(from, match.index), null);
    const href = decoded(match[1] ?? match[2] ?? match[3] ?? '');
    plain(match[4] ?? '', /^https:\/\//i.test(href) ? href : null);
    from = match.index + match[0].length;
  }
  plain(html.slice(from), null);
  return parts;
}

const decoded = (text: string) =>
  text.replace(/&(?:#(\d+)|#x([0-9a-f]+)|([a-z]+));/gi, (whole, decimal, hex, name) => {
    if (typeof name === 'string') return entities[name.toLowerCase()] ?? whole;
    const code = typeof decimal === 'string' ? parseInt(decimal, 10) : parseInt(String(hex), 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '';
  });

/** Several credits in one line: what two of them say is said once. */
export function joinedCredits(credits: readonly Credit[]): Credit {
  const said = new Set<string>();
  return credits.flat().filter(({ text }) => {
    const key = text.toLowerCase();
    return !said.has(key) && said.add(key);
  });
}

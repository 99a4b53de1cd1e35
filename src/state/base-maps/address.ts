import type { OwnKind } from './own-map';

/** An address as it will be asked, or what to change about what was typed. */
export type AddressReading =
  { readonly ok: true; readonly address: string } | { readonly ok: false; readonly reason: string };

const examples: Readonly<Record<OwnKind, string>> = {
  tiles: 'https://tiles.example.org/{z}/{x}/{y}.png',
  style: 'https://tiles.example.org/style.json',
  archive: 'https://maps.example.org/region.pmtiles',
};

const mend = (reason: string): AddressReading => ({ ok: false, reason });

/**
 * Reads a typed address of a base map. The page may ask https and this machine only (its content security policy
 * says so), and a mend is named for what people usually get wrong.
 */
export function readAddress(kind: OwnKind, typed: string): AddressReading {
  // Copied from another program, braces often come percent-encoded, and archives with their protocol in front.
  const text = typed
    .trim()
    .replace(/%7B/gi, '{')
    .replace(/%7D/gi, '}')
    .replace(/^pmtiles:\/\//i, '');
  if (text === '') return mend(`Type the address, for example ${examples[kind]}`);
  const scheme = /^([a-z][a-z0-9+.-]*):\/\//i.exec(text)?.[1]?.toLowerCase();
  if (scheme === undefined) return mend('Begin the address with https://');
  if (scheme === 'file')
    return mend('A page cannot read addresses that begin with file: take "Choose a file" instead.');
  if (scheme !== 'https' && scheme !== 'http')
    return mend(
      `Write https:// instead of ${scheme}://: other programs know what that means, a page does not.`,
    );
  const url = parsed(text);
  if (!url) return mend('This is no address: look for blanks or missing parts.');
  if (scheme === 'http' && !isThisMachine(url.hostname))
    return mend(
      'Write https:// instead of http://: only on this machine (localhost) can a map come over http.',
    );
  if (url.username !== '') return mend('Leave out the user name and the password: a page may not send them.');
  return placeholders(kind, text) ?? { ok: true, address: text };
}

/** What is wrong with what stands in braces; null when nothing is. */
function placeholders(kind: OwnKind, text: string): AddressReading | null {
  const names = [...text.matchAll(/\{([^{}]*)\}/g)].map((match) => match[1] ?? '');
  const key =
    names.find((name) => /key|token|secret/i.test(name)) ?? /<[^>]*(?:key|token)[^>]*>/i.exec(text)?.[0];
  if (key !== undefined) return mend(`Put your own key in the place of "${key}".`);
  if (kind !== 'tiles') {
    if (names.includes('z'))
      return mend('With {z} in it, this is a tile address: choose "Tiles" as its kind.');
    if (kind === 'style' && /\.pmtiles($|\?)/i.test(text))
      return mend('This is an archive: choose "PMTiles archive" as its kind.');
    return names.length === 0 ? null : mend(`Put a value in the place of {${names[0] ?? ''}}.`);
  }
  if (/\.pmtiles($|\?)/i.test(text)) return mend('This is an archive: choose "PMTiles archive" as its kind.');
  if (/\.json($|\?)/i.test(text)) return mend('This is a style: choose "Style" as its kind.');
  if (names.includes('-y'))
    return mend('Write {y} instead of {-y}, with a server that counts its rows from the north.');
  const missing = ['z', 'x', 'y'].filter((name) => !names.includes(name));
  if (missing.length > 0)
    return mend(
      `Put ${missing.map((name) => `{${name}}`).join(' and ')} where the address has the ${missing.map((name) => meaning[name]).join(' and the ')}, for example ${examples.tiles}`,
    );
  if (names.includes('s') || names.some((name) => name.startsWith('switch')))
    return mend('Put one of the server’s letters in the place of {s}, mostly a.');
  const unknown = names.find((name) => !['z', 'x', 'y', 'ratio'].includes(name));
  if (unknown === 'r') return mend('Leave out {r}, or write {ratio} for it.');
  return unknown === undefined ? null : mend(`Put a value in the place of {${unknown}}.`);
}

const meaning: Readonly<Record<string, string>> = { z: 'zoom', x: 'column', y: 'row' };

function parsed(text: string): URL | null {
  if (/\s/.test(text)) return null;
  try {
    return new URL(text);
  } catch {
    return null;
  }
}

/** As the content security policy has it. */
const isThisMachine = (host: string) => host === 'localhost' || host === '127.0.0.1';

/** A name for a map that was given none: its server, or the file's name without its extension. */
export const nameOfAddress = (address: string): string =>
  parsed(address.replace(/[{}]/g, ''))?.host ?? address;

import { decodeCatalogue } from './decode';
import { decodeFrequencies } from './decode-frequencies';
import { decodeRunways } from './decode-runways';
import type { ByAirfield, Catalogue, CatalogueFrequency, CatalogueRunway, Loaded } from './types';
import { damaged, type FileName } from './unpack';

/** What of a response is used; `fetch` gives it. */
export type Fetcher = (url: string) => Promise<Pick<Response, 'ok' | 'status' | 'text'>>;

const fromNetwork: Fetcher = (address) => fetch(address);

/** Fetches and reads what a search needs (a static file of 1.9 MB, 0.77 MB compressed). Never rejects. */
export async function loadCatalogue(url: string, fetcher = fromNetwork): Promise<Loaded<Catalogue>> {
  const json = await loadJson('The airfield catalogue', url, fetcher);
  return json.ok ? decodeCatalogue(json.value) : json;
}

/** Fetches and reads the runways of a catalogue's airfields (0.21 MB compressed). Never rejects. */
export async function loadRunways(
  url: string,
  catalogue: Catalogue,
  fetcher = fromNetwork,
): Promise<Loaded<ByAirfield<CatalogueRunway>>> {
  const json = await loadJson('The list of runways', url, fetcher);
  return json.ok ? decodeRunways(json.value, catalogue) : json;
}

/** Fetches and reads the frequencies of a catalogue's airfields (9 kB compressed). Never rejects. */
export async function loadFrequencies(
  url: string,
  catalogue: Catalogue,
  fetcher = fromNetwork,
): Promise<Loaded<ByAirfield<CatalogueFrequency>>> {
  const json = await loadJson('The list of frequencies', url, fetcher);
  return json.ok ? decodeFrequencies(json.value, catalogue) : json;
}

async function loadJson(what: FileName, url: string, fetcher: Fetcher): Promise<Loaded<unknown>> {
  let text: string;
  try {
    const response = await fetcher(url);
    if (!response.ok) return { ok: false, reason: `${what} cannot be loaded (status ${response.status}).` };
    text = await response.text();
  } catch {
    return { ok: false, reason: `${what} cannot be loaded. Is the network there?` };
  }
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch {
    return damaged(what, 'it is not JSON');
  }
}

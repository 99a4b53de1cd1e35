import { decodeCatalogue } from './decode';
import type { CatalogueResult } from './types';

/** What of a response is used; `fetch` gives it. */
type Fetcher = (url: string) => Promise<Pick<Response, 'ok' | 'status' | 'text'>>;

/** Fetches and reads the catalogue (a static file of about 4 MB, 1.2 MB compressed). Never rejects. */
export async function loadCatalogue(
  url: string,
  fetcher: Fetcher = (address) => fetch(address),
): Promise<CatalogueResult> {
  let text: string;
  try {
    const response = await fetcher(url);
    if (!response.ok)
      return { ok: false, reason: `The airfield catalogue cannot be loaded (status ${response.status}).` };
    text = await response.text();
  } catch {
    return { ok: false, reason: 'The airfield catalogue cannot be loaded. Is the network there?' };
  }
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { ok: false, reason: 'The airfield catalogue is damaged: it is not JSON.' };
  }
  return decodeCatalogue(json);
}

import { decodeLand, type LandArea } from './land-file';

type Fetcher = (url: string) => Promise<Pick<Response, 'ok' | 'json'>>;

/** Fetches the world's land, a file of the page's own. Null when it cannot be had: a map without land is a map too. */
export async function loadLand(
  url: string,
  fetcher: Fetcher = (address) => fetch(address),
): Promise<readonly LandArea[] | null> {
  try {
    const response = await fetcher(url);
    return response.ok ? decodeLand(await response.json()) : null;
  } catch {
    return null;
  }
}

import type { SkySource } from '../../figures/light/sky-at';
import type { SkyThere } from '../../figures/light/sky';
import type { Formats } from '../formats';

/** Skies that one chooses from by eye, by their share of direct sun; in eighths of the sky as reports have them. */
export const coverChoices = [
  [1, 'clear or few clouds'],
  [0.8, 'scattered clouds'],
  [0.35, 'broken clouds'],
  [0, 'overcast'],
] as const;

/** How far one sees, in m, to choose from. */
export const visibilityChoices = [10_000, 7000, 5000, 3000, 1500, 800] as const;

/** The nearest of them in words. */
function coverWords(direct: number): string {
  const off = (share: number) => Math.abs(share - direct);
  const [, words] = coverChoices.reduce((best, choice) => (off(choice[0]) < off(best[0]) ? choice : best));
  return words;
}

export const visibilityWords = (visibility: number, format: Pick<Formats, 'length'>): string =>
  visibility >= 10_000 ? `${format.length(10_000)} or more` : format.length(visibility);

const sources: Readonly<Record<SkySource, string>> = {
  typed: 'as you said',
  metar: 'from the METAR',
  taf: 'from the TAF',
  assumed: 'no word of it',
};

/** "overcast, 3,000 m, from the METAR"; "no word of it: clear assumed". */
export function skyWords(
  { direct, visibility, source }: SkyThere & { readonly source: SkySource },
  format: Pick<Formats, 'length'>,
): string {
  if (source === 'assumed') return `${sources.assumed}: clear assumed`;
  return `${coverWords(direct)}, ${visibilityWords(visibility, format)}, ${sources[source]}`;
}

/** The same of both moments, once where it is the same. */
export function skiesWords(
  { a, b }: Readonly<Record<'a' | 'b', SkyThere & { readonly source: SkySource }>>,
  format: Pick<Formats, 'length'>,
): string {
  const [atA, atB] = [skyWords(a, format), skyWords(b, format)];
  return atA === atB ? atA : `A ${atA}; B ${atB}`;
}

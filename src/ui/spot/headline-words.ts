import type { Headline } from '../../state/answers';
import { factor } from '../../units/format';
import type { Formats } from '../formats';
import { aspectWords, lightOn } from '../words/sample-words';

/** What one waits for on a path, as seen and lit, and what it is worth: "side-on, front-lit; good". */
export function headlineWords({ sample, word }: Headline, flat: boolean): string {
  const seen = sample.aspect === null ? '' : `${aspectWords(sample.aspect)}, `;
  return `${seen}${lightOn(sample, flat)}; ${word}`;
}

/** Straight on, in the words that photographers ask for. */
const straight = (aspect: number): string =>
  aspect <= 20 ? 'nose-on' : aspect >= 160 ? 'tail-on' : aspectWords(aspect);

/** What scores higher than the pass, and where: "nose-on at 1,020 m scores higher, 0.91"; null where it reads the same. */
export function elsewhereWords({ sample, elsewhere }: Headline, format: Formats): string | null {
  if (!elsewhere) return null;
  const total = factor(elsewhere.score.total);
  if (total === factor(sample.score.total)) return null;
  const seen = elsewhere.aspect === null ? 'the aircraft' : straight(elsewhere.aspect);
  return `${seen} at ${format.length(elsewhere.slantRange)} scores higher, ${total}`;
}

/** Which moments nothing at a spot is worth waiting for; null where something is at both. */
export function nothingAt(worth: Readonly<Record<'a' | 'b', boolean>>): string | null {
  const letters = (['a', 'b'] as const).filter((m) => !worth[m]).map((m) => m.toUpperCase());
  return letters.length === 0 ? null : `Nothing worth waiting for at ${letters.join(' or ')}.`;
}

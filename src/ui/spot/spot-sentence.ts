import type { SpotFigures } from '../../figures/types';
import type { PathSummary } from '../../figures/summary/spot-summary';
import type { Formats } from '../formats';
import { focal } from '../../units/format';
import { lightNotes, lightWords, sideWords } from '../words/sample-words';

/** What is known of a spot, as far as one line has room for it. */
export interface SpotLine {
  /** "350 m, south side of 07/25"; "" without a runway. */
  readonly place: string;
  /** "25 arrival"; "" when no path is within reach. */
  readonly path: string;
  /** "280 mm", "357 m". */
  readonly focal: string;
  readonly range: string;
  readonly light: { readonly a: string; readonly b: string };
}

interface Names {
  readonly runway: (id: string) => string;
  readonly path: (path: string) => string;
}

export function spotLine(
  spot: SpotFigures,
  leading: PathSummary | null,
  names: Names,
  format: Formats,
): SpotLine {
  // The runway that the best picture belongs to, else the nearest one.
  const nearest =
    spot.runways.find((r) => r.id === leading?.ref.runway) ??
    [...spot.runways].sort((a, b) => a.centrelineDistance - b.centrelineDistance)[0];
  const light = (moment: 'a' | 'b') => {
    const best = leading?.[moment].best;
    return best ? [lightWords[best.light], ...lightNotes(best)].join(', ') : '';
  };
  return {
    place: nearest ? `${sideWords(nearest, format)} of ${names.runway(nearest.id)}` : '',
    path: leading ? names.path(leading.ref.path) : '',
    focal: leading ? focal(leading.a.best.focalLength) : '',
    range: leading ? format.length(leading.a.best.slantRange) : '',
    light: { a: light('a'), b: light('b') },
  };
}

/** The same as one short sentence, to be read out. */
export function spotSentence(name: string, line: SpotLine): string {
  const parts = [
    ...(line.place ? [line.place] : []),
    ...(line.path
      ? [`${line.path} ${line.focal} at ${line.range}`, `light at A ${line.light.a}`]
      : ['no path within reach']),
  ];
  return `${name}: ${parts.join('; ')}.`;
}

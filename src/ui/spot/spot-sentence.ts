import type { PathSummary } from '../../figures/summary/spot-summary';
import type { SpotFigures } from '../../figures/types';
import type { Answers } from '../../state/answers';
import { focal } from '../../units/format';
import type { Formats } from '../formats';
import { lightOn, sideWords, takeWords } from '../words/sample-words';

/** What is known of a spot, as far as one line has room for it. */
export interface SpotLine {
  /** "350 m, south side of 07/25"; "" without a runway. */
  readonly place: string;
  /** "25 arrival"; "" when no path is within reach. */
  readonly path: string;
  /** "280 mm", "357 m". */
  readonly focal: string;
  readonly range: string;
  /** "100-400 mm f/5.6: 280 mm, f/5.6, fits"; "" without a lens. */
  readonly lens: string;
  /** "front-lit until 15:33". */
  readonly light: { readonly a: string; readonly b: string };
}

interface Asked {
  readonly format: Formats;
  readonly answers: Pick<Answers, 'headline' | 'lensFor' | 'isFlat'>;
  readonly runway: (id: string) => string;
  readonly path: (path: string) => string;
  /** The time of day up to which the light at a moment stays as it is; null where it stays, or nobody asks. */
  readonly until: Readonly<Record<'a' | 'b', string | null>>;
}

/** The same that the card of a spot leads with. */
export function spotLine(
  spot: { readonly a: SpotFigures; readonly b: SpotFigures },
  leading: PathSummary | null,
  { format, answers, runway, path, until }: Asked,
): SpotLine {
  const { runways } = spot.a;
  // The runway that the picture belongs to, else the nearest one.
  const nearest =
    runways.find((r) => r.id === leading?.ref.runway) ??
    runways.toSorted((a, b) => a.centrelineDistance - b.centrelineDistance)[0];
  const place = nearest ? `${sideWords(nearest, format)} of ${runway(nearest.id)}` : '';
  if (!leading) return { place, path: '', focal: '', range: '', lens: '', light: { a: '', b: '' } };
  const light = (moment: 'a' | 'b') => {
    const words = lightOn(answers.headline(leading[moment]).sample, answers.isFlat(spot[moment].sky));
    return until[moment] === null ? words : `${words} until ${until[moment]}`;
  };
  const { sample } = answers.headline(leading.a);
  const take = answers.lensFor(sample.focalLength);
  return {
    place,
    path: path(leading.ref.path),
    focal: focal(sample.focalLength),
    range: format.length(sample.slantRange),
    lens: take ? takeWords(take) : '',
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

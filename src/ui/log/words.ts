import type { Pass } from '../../figures/log/find-passes';
import type { KeptMeasure } from '../../figures/log/log-entry-of';
import { endName, endPath, leadFrame } from '../../state/log-figures';
import type { Taught } from '../../figures/log/what-it-teaches';
import type { Sample } from '../../figures/types';
import type { Contents } from '../../survey/contents';
import { focal, share } from '../../units/format';
import type { Formats } from '../formats';
import { months } from '../words/months';
import { lightWords } from '../words/sample-words';

type Named = Pick<Contents, 'runways' | 'spots' | 'subjects'>;

/** Arrivals and departures of every end, as a question offers them. */
export const pathChoices = ({ runways }: Pick<Contents, 'runways'>): readonly (readonly [string, string])[] =>
  runways.flatMap((runway) =>
    ([0, 1] as const).flatMap((end) =>
      (['arrival', 'departure'] as const).map(
        (kind) => [`${endPath(runway, end)}/${kind}`, `${endName(runway, end)} ${kind}`] as const,
      ),
    ),
  );

/** "Mound, 24 arrival, Plain": what is known of a pass, and what is not. */
export function passWords(
  contents: Named,
  { spot, path, subject }: Pick<Pass, 'spot' | 'path' | 'subject'>,
): string {
  const spotName =
    spot === null ? 'spot not known' : contents.spots.find((s) => s.id === spot)?.name || 'a spot';
  const pathName =
    path === null ? 'path not known' : (pathChoices(contents).find(([key]) => key === path)?.[1] ?? path);
  const subjectName =
    subject === null
      ? 'aircraft not known'
      : (contents.subjects.find(({ key }) => key === subject)?.name ?? subject);
  return [spotName, pathName, subjectName].join(', ');
}

/** How the frame compares with what the figures said: "300 mm, 480 mm needed: you framed at 50 %; front-lit predicted". */
export function comparedWords(pass: Pass, predicted: Sample | null, fill: number): string {
  const { focalLength } = leadFrame(pass).record;
  const needed = pass.subject === null ? null : (predicted?.focalLength ?? null);
  const parts: string[] = [];
  if (focalLength !== null && needed !== null && needed > 0)
    parts.push(
      `${focal(focalLength)}, ${focal(needed)} needed: you framed at ${share((fill * focalLength) / needed)}`,
    );
  else if (focalLength !== null) parts.push(focal(focalLength));
  if (predicted) parts.push(`${lightWords[predicted.light]} by the figures`);
  return parts.join('; ');
}

/** "Measured: 1,240 m ± 31 m away". */
export const keptMeasureWords = (
  { slantRange, slantRangeError }: Pick<KeptMeasure, 'slantRange' | 'slantRangeError'>,
  format: Pick<Formats, 'length'>,
): string => `Measured: ${format.length(slantRange)} ± ${format.length(slantRangeError)} away`;

/** "12 visits, best 16:40 to 18:00 in March." */
export function taughtWords({ visits, best }: Taught, format: Pick<Formats, 'clock'>): string {
  const times = visits === 1 ? '1 visit' : `${visits} visits`;
  if (!best) return `${times}.`;
  const clock = (minutes: number) => {
    const within = minutes % 1440;
    return format.clock(
      `${String(Math.floor(within / 60)).padStart(2, '0')}:${String(within % 60).padStart(2, '0')}`,
    );
  };
  const month = best.month === null ? '' : ` in ${months[best.month - 1]}`;
  return `${times}, best ${clock(best.from)} to ${clock(best.to)}${month}.`;
}

export const photographsWords = (count: number): string =>
  count === 1 ? '1 photograph' : `${count.toLocaleString('en')} photographs`;

/** What the button says that keeps so many passes. */
export const keepWords = (count: number): string =>
  count === 0 ? 'Keep in the log' : `Keep ${passesWords(count)} in the log`;

/** Why so many passes cannot be kept yet. */
export const withoutSpotWords = (count: number): string =>
  `${passesWords(count)} without a spot: say above where you stood, or ${count === 1 ? 'it is' : 'they are'} left out.`;

export const passesWords = (count: number): string => (count === 1 ? '1 pass' : `${count} passes`);

import type { FoundDay } from '../../ports/trips';
import { decimal, focalRange } from '../../units/format';
import type { Formats } from '../formats';
import { distanceWords, goingWords, minutesWords } from '../near/words';

type Day = FoundDay['day'];
export type Stay = Day['stays'][number];

const againstWords: Readonly<Record<NonNullable<Day['against']>, string>> = {
  'photography-forbidden': 'The field forbids photography: nothing is proposed.',
  'no-spot': 'No standing spot is in this survey yet.',
  'no-end': 'No end of a runway would be in use: see the runways and their ends.',
  'nobody-may-stand': 'Nobody may stand at any of its spots.',
  'nothing-good': 'No spot has a picture worth waiting for on this day.',
};
const flowWords: Readonly<Record<Day['flowFrom'], string>> = {
  'typed-wind': 'by the typed wind',
  forecast: 'by its forecast',
  flights: 'by its recorded flights',
  record: 'by its wind record',
  survey: 'as the survey says',
  assumed: 'assumed: the longest runway',
};
const trafficFrom = { typed: 'as typed', log: 'by its log', list: 'by its list of movements' } as const;

/** "212 good minutes x 12 movements an hour (as typed): about 42 good passes." Or why there is none. */
export function worthWords({ goodMinutes, traffic, goodPasses, against }: Day): string {
  if (against !== null) return againstWords[against];
  const minutes = `${decimal(goodMinutes, 0)} good minutes`;
  if (traffic === null || goodPasses === null) return `${minutes}; traffic unknown.`;
  const perHour = decimal(traffic.perHour, traffic.perHour < 10 ? 1 : 0);
  return `${minutes} × ${perHour} movements an hour (${trafficFrom[traffic.from]}): about ${decimal(goodPasses, 0)} good passes.`;
}

/** "Ends: 25 (as the survey says)", with shares where there are several. */
export function endsWords({ flows, flowFrom }: Day): string {
  const named = flows.filter(({ ends }) => ends.length > 0);
  if (named.length === 0) return '';
  const [only] = named;
  const words =
    named.length === 1 && only
      ? only.ends.join(', ')
      : named.map(({ ends, share }) => `${ends.join(', ')} ${decimal(100 * share, 0)} %`).join('; ');
  return `Ends: ${words} (${flowWords[flowFrom]}).`;
}

/** "24 km, about 1 h 50 min by bicycle". */
export const wayWords = (way: FoundDay['way'], by: keyof typeof goingWords): string =>
  way === null ? '' : `${distanceWords(way.distance)}, about ${minutesWords(way.minutes)} ${goingWords[by]}`;

/** "300–400 mm, the 100-400". */
export const lensWords = ({ focal, lens }: Stay): string =>
  [focal === null ? '' : focalRange(focal.shortest, focal.longest), lens ?? ''].filter(Boolean).join(', ');

export const timeWords = ({ from, to }: Stay, zone: string, format: Formats): string =>
  `${format.clockAt(from, zone)}–${format.clockAt(to, zone)}`;

export const placeWords = ({ name, checkFirst }: Stay): string =>
  `${name || 'Unnamed spot'}${checkFirst ? ' (check first)' : ''}`;
